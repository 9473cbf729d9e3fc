package rootwright.working.route;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.roots.PowerSums;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/**
 * S_k modulo m far out: n residues in a row decide all that follow, so the sequence is periodic
 * from the first repetition on.
 */
final class ResiduePeriod implements Route {

  /** Most residues that are written down. */
  private static final int LONGEST = 80;

  @Override
  public String name() {
    return "residue-period";
  }

  @Override
  public String title() {
    return "find the period of the remainders";
  }

  @Override
  public String teaches() {
    return "There are finitely many rows of n remainders, so a row returns.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Optional<ResidueAsk> read = ResidueAsk.of(asked);
    if (read.isEmpty()) {
      return ResidueAsk.OTHER;
    }
    ResidueAsk ask = read.get();
    int n = ask.degree();
    List<BigInteger> residues = new ArrayList<>();
    ask.start().forEach(value -> residues.add(value.mod(ask.modulus())));
    Map<List<BigInteger>, Integer> seen = new HashMap<>();
    for (int at = 0; residues.size() <= LONGEST; at++) {
      List<BigInteger> row = List.copyOf(residues.subList(at, at + n));
      Integer before = seen.putIfAbsent(row, at);
      if (before != null) {
        return ask.index().compareTo(BigInteger.valueOf(at)) < 0
            ? new Attempt.Declined("the index comes before the remainders return")
            : worked(ask, residues, before, at - before);
      }
      residues.add(ask.next(row));
    }
    return new Attempt.Declined("the remainders do not return within %d places".formatted(LONGEST));
  }

  private Attempt worked(ResidueAsk ask, List<BigInteger> residues, int from, int period) {
    Lines lines = new Lines(ask.problem().setting());
    ask.begin(lines);
    List<Step> steps = new ArrayList<>(lines.steps());
    steps.add(
        Step.argument(
            Idea.RECURRENCE,
            "the remainders of %s₀, %s₁, … modulo %s by the recurrence"
                .formatted(ask.letter(), ask.letter(), ask.modulus()),
            new Formula.Listing(residues.stream().map(Formula::number).toList())));
    steps.add(
        Step.argument(
            Idea.CASES,
            "the %s of place %d again, and they decide all that follow"
                .formatted(ask.degree() == 1 ? "remainder" : ask.degree() + " remainders", from),
            new Formula.Words(
                "period " + period + (from == 0 ? "" : " from place " + from + " on"))));
    BigInteger length = BigInteger.valueOf(period);
    BigInteger rest = ask.index().subtract(BigInteger.valueOf(from)).mod(length);
    int place = from + rest.intValueExact();
    BigInteger periods = ask.index().subtract(BigInteger.valueOf(place)).divide(length);
    Lines end = new Lines(ask.problem().setting());
    end.add(
        Idea.ARITHMETIC,
        "whole periods are left out",
        Formula.number(ask.index()),
        new Combination()
            .plus(Formula.number(periods).times(Formula.number(length)))
            .plus(Rational.of(place))
            .formula());
    BigInteger exact = PowerSums.of(ask.problem().polynomial()).value(place).numerator();
    end.add(
        Idea.ARITHMETIC,
        "the power sum of that place, as a check of the row",
        ask.name(place),
        Formula.number(exact),
        ask.divided(exact));
    steps.addAll(end.steps());
    BigInteger residue = residues.get(place);
    steps.add(ask.end(residue, "as place %d, modulo %s".formatted(place, ask.modulus())));
    return ask.worked(title(), steps, residue);
  }
}
