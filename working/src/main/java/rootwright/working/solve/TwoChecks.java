package rootwright.working.solve;

import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.working.check.ClaimCheck;
import rootwright.working.check.Verdict;
import rootwright.working.check.exact.ExactCheck;
import rootwright.working.check.second.EnclosureCheck;
import rootwright.working.step.Claim;

/** The exact check and the second opinion, both of which must confirm whatever is shown. */
public final class TwoChecks {

  private final ClaimCheck exact;
  private final ClaimCheck second;

  /** With the two checks of the house. */
  public TwoChecks() {
    this(new ExactCheck(), new EnclosureCheck());
  }

  /** With other checks. */
  public TwoChecks(ClaimCheck exact, ClaimCheck second) {
    this.exact = exact;
    this.second = second;
  }

  /** The same checks for the claims of one problem and one thread; they may keep what they find. */
  public TwoChecks forOneProblem() {
    return new TwoChecks(exact.forOneProblem(), second.forOneProblem());
  }

  /**
   * What the second check said, if both confirm the claim; empty if one of them cannot say.
   *
   * @throws CheckFailedException if one of them refutes it
   */
  public Optional<SecondOpinion> confirm(String place, Formula shown, Claim claim) {
    Verdict first = refuse(place, shown, exact.of(claim));
    Verdict other = refuse(place, shown, second.of(claim));
    return first.isConfirmed() && other instanceof Verdict.Confirmed confirmed
        ? Optional.of(SecondOpinion.of(confirmed))
        : Optional.empty();
  }

  /**
   * What both checks together say of a claim that somebody else made: confirmed if both confirm it,
   * refuted if one refutes it and the other does not contradict, else undecided.
   *
   * @throws CheckFailedException if one confirms what the other refutes, which is a fault of ours
   */
  public Verdict verdict(Formula shown, Claim claim) {
    Verdict first = exact.of(claim);
    Verdict other = second.of(claim);
    if (first instanceof Verdict.Refuted refuted && !other.isConfirmed()) {
      return refuted;
    } else if (other instanceof Verdict.Refuted refuted && !first.isConfirmed()) {
      return refuted;
    } else if (first instanceof Verdict.Refuted || other instanceof Verdict.Refuted) {
      throw new CheckFailedException("a line", shown, "the two checks contradict each other");
    }
    return first.isConfirmed() ? other : first;
  }

  /**
   * What the second check said of an answer that both must confirm.
   *
   * @throws CheckFailedException if one of them refutes it
   * @throws UnconfirmedException if one of them cannot say
   */
  public SecondOpinion require(Formula shown, Claim claim) {
    return confirm("the answer", shown, claim)
        .orElseThrow(
            () ->
                new UnconfirmedException(
                    "one of the two checks cannot follow it, and nothing is shown unchecked"));
  }

  private static Verdict refuse(String place, Formula shown, Verdict verdict) {
    if (verdict instanceof Verdict.Refuted refuted) {
      throw new CheckFailedException(place, shown, refuted.why());
    }
    return verdict;
  }
}
