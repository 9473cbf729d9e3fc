package rootwright.working.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.working.check.Verdict;
import rootwright.working.solve.CheckFailedException;

/**
 * Writes facts and proofs out in chosen letters; nothing leaves it that expansion has not shown.
 */
public final class ProofWriter {

  private ProofWriter() {}

  /**
   * The statement of a fact as an equation in these letters.
   *
   * @throws CheckFailedException if it does not hold
   */
  public static Formula statement(Fact fact, Letters letters) {
    return confirmed(fact.name(), fact.shown(), letters);
  }

  /**
   * The lines of a proof in these letters.
   *
   * @throws CheckFailedException if a computed line does not hold
   */
  public static List<CheckedLine> lines(Fact fact, Letters letters, Proof.Length length) {
    List<CheckedLine> lines = new ArrayList<>();
    for (ProofLine line : fact.proof().lines(length)) {
      String words = letters.fill(line.words());
      Optional<Formula> shown =
          line.claim().map(claim -> confirmed(fact.name() + ": " + words, claim, letters));
      lines.add(new CheckedLine(words, shown));
    }
    return List.copyOf(lines);
  }

  private static Formula confirmed(String place, General claim, Letters letters) {
    Identity identity = claim.in(letters);
    Verdict verdict = ExpansionCheck.of(identity);
    if (verdict instanceof Verdict.Refuted refuted) {
      throw new CheckFailedException(place, identity.shown(), refuted.why());
    }
    if (verdict instanceof Verdict.Undecided undecided) {
      throw new CheckFailedException(place, identity.shown(), undecided.why());
    }
    return identity.shown();
  }
}
