package rootwright.working.letters;

import java.math.BigInteger;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.working.problem.WholeNumber;

/** Reads the exponent of a sum of like powers of all roots. */
final class PowerAsked {

  private PowerAsked() {}

  /** k, if the formula is S_k, Σ r^k or r^k + s^k + …. */
  static Optional<Integer> of(Formula formula, List<String> roots) {
    if (formula instanceof Formula.Family family
        && (family.letter().equals("S") || family.letter().equals("p"))) {
      return WholeNumber.of(family.index())
          .filter(k -> k.signum() > 0 && k.bitLength() < 16)
          .map(BigInteger::intValueExact);
    } else if (formula instanceof Formula.Aggregate aggregate
        && aggregate.operation() == Formula.Aggregate.Operation.SUM) {
      return power(aggregate.body(), new HashSet<>(roots));
    } else if (formula instanceof Formula.Sum sum && sum.terms().size() == roots.size()) {
      Set<String> left = new HashSet<>(roots);
      Set<Integer> exponents = new HashSet<>();
      for (Formula term : sum.terms()) {
        Optional<Integer> exponent = power(term, left);
        if (exponent.isEmpty()) {
          return Optional.empty();
        }
        exponents.add(exponent.get());
      }
      return exponents.size() == 1 ? exponents.stream().findFirst() : Optional.empty();
    }
    return Optional.empty();
  }

  private static Optional<Integer> power(Formula term, Set<String> left) {
    if (term instanceof Formula.Name name && left.remove(name.spelling())) {
      return Optional.of(1);
    } else if (term instanceof Formula.Power power
        && power.base() instanceof Formula.Name name
        && left.remove(name.spelling())) {
      return WholeNumber.of(power.exponent())
          .filter(k -> k.signum() > 0 && k.bitLength() < 16)
          .map(BigInteger::intValueExact);
    }
    return Optional.empty();
  }
}
