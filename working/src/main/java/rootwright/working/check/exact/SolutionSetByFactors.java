package rootwright.working.check.exact;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rootwright.algebra.factor.Factorisation;
import rootwright.algebra.factor.IrreducibleFactor;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.real.SturmSequence;
import rootwright.algebra.value.ExactValue;
import rootwright.working.check.Verdict;
import rootwright.working.step.Claim;
import rootwright.working.step.NumberDomain;

/**
 * Whether listed values are all solutions of an equation: each belongs to an irreducible factor by
 * its minimal polynomial, and every factor has as many as it must have in the domain.
 */
final class SolutionSetByFactors {

  private SolutionSetByFactors() {}

  static Verdict of(Claim.SolutionSet claim) {
    Set<ExactValue> distinct = new HashSet<>(claim.values());
    if (distinct.size() != claim.values().size()) {
      return new Verdict.Refuted("a solution is listed twice");
    }
    Map<Polynomial, Integer> listed = new HashMap<>();
    for (ExactValue value : claim.values()) {
      if (!claim.domain().contains(value)) {
        return new Verdict.Refuted(value + " is none of the " + claim.domain().words());
      }
      listed.merge(value.minimalPolynomial(), 1, Integer::sum);
    }
    List<IrreducibleFactor> factors = Factorisation.of(claim.equation()).factors();
    for (IrreducibleFactor factor : factors) {
      int found = listed.getOrDefault(factor.polynomial().primitive(), 0);
      int expected = count(factor.polynomial(), claim.domain());
      if (found != expected) {
        return new Verdict.Refuted(
            "%s has %d solutions among the %s, not %d"
                .formatted(factor.polynomial(), expected, claim.domain().words(), found));
      }
      listed.remove(factor.polynomial().primitive());
    }
    return listed.isEmpty()
        ? Verdict.confirmed("exact factors of the equation")
        : new Verdict.Refuted("a listed value solves no factor of the equation");
  }

  static Verdict of(Claim.CountOfRoots claim) {
    int found = 0;
    for (IrreducibleFactor factor : Factorisation.of(claim.polynomial()).factors()) {
      found += count(factor.polynomial(), claim.domain());
    }
    return found == claim.distinct()
        ? Verdict.confirmed("Sturm's count of the real roots of every factor")
        : new Verdict.Refuted(
            "there are %d roots among the %s".formatted(found, claim.domain().words()));
  }

  /** How many roots of an irreducible polynomial lie in the domain. */
  private static int count(Polynomial factor, NumberDomain domain) {
    SturmSequence sturm = SturmSequence.of(factor);
    boolean linear = factor.degree() == 1;
    Rational root = linear ? factor.coefficient(0).over(factor.lead()).negate() : Rational.ZERO;
    return switch (domain) {
      case COMPLEX -> factor.degree();
      case REAL -> sturm.count();
      case POSITIVE -> sturm.countAbove(Rational.ZERO);
      case NEGATIVE -> sturm.countUpTo(Rational.ZERO) - (factor.coefficient(0).isZero() ? 1 : 0);
      case RATIONAL -> linear ? 1 : 0;
      case INTEGER -> linear && root.isInteger() ? 1 : 0;
      case POSITIVE_INTEGER -> linear && root.isInteger() && root.signum() > 0 ? 1 : 0;
    };
  }
}
