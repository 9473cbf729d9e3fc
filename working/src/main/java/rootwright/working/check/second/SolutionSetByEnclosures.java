package rootwright.working.check.second;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.enclosure.EnclosedRoot;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.enclosure.RootEnclosures;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.working.check.Verdict;
import rootwright.working.step.Claim;
import rootwright.working.step.NumberDomain;

/**
 * Whether listed values are all solutions of an equation: every enclosed root that may lie in the
 * domain must meet exactly one of them.
 */
final class SolutionSetByEnclosures {

  private static final int DIGITS = 30;

  private SolutionSetByEnclosures() {}

  static Verdict of(Claim.SolutionSet claim) {
    List<ExactValue> left = new ArrayList<>(claim.values());
    List<EnclosedRoot> roots =
        claim.equation().degree() < 1 ? List.of() : RootEnclosures.of(claim.equation(), DIGITS);
    for (EnclosedRoot root : roots) {
      if (!lies(root, claim.domain(), claim.equation())) {
        continue;
      }
      List<ExactValue> near =
          left.stream().filter(value -> value.enclosure(DIGITS).overlaps(root.disc())).toList();
      if (near.size() != 1) {
        return new Verdict.Refuted("the solution near " + root.disc() + " is not listed once");
      }
      left.remove(near.get(0));
    }
    return left.isEmpty()
        ? Verdict.confirmed("certified enclosures of the solutions", DIGITS)
        : new Verdict.Refuted(left.get(0) + " is listed and is no solution in the domain");
  }

  static Verdict of(Claim.CountOfRoots claim) {
    List<EnclosedRoot> roots =
        claim.polynomial().degree() < 1 ? List.of() : RootEnclosures.of(claim.polynomial(), DIGITS);
    long found =
        roots.stream().filter(root -> lies(root, claim.domain(), claim.polynomial())).count();
    return found == claim.distinct()
        ? Verdict.confirmed("certified enclosures of the roots")
        : new Verdict.Refuted(
            "%d enclosed roots lie among the %s".formatted(found, claim.domain().words()));
  }

  private static boolean lies(EnclosedRoot root, NumberDomain domain, Polynomial equation) {
    return switch (domain) {
      case COMPLEX -> true;
      case REAL -> root.real();
      case POSITIVE -> root.real() && root.interval().isPositive();
      case NEGATIVE -> root.real() && root.interval().isNegative();
      case RATIONAL -> root.real() && rational(root, equation).isPresent();
      case INTEGER ->
          root.real() && rational(root, equation).filter(Rational::isInteger).isPresent();
      case POSITIVE_INTEGER ->
          root.real()
              && rational(root, equation)
                  .filter(number -> number.isInteger() && number.signum() > 0)
                  .isPresent();
    };
  }

  /** A rational root is a whole number over the lead coefficient of the primitive polynomial. */
  private static Optional<Rational> rational(EnclosedRoot root, Polynomial equation) {
    Rational lead = equation.primitive().lead();
    RealBall interval = root.interval();
    Rational centre = interval.centre().toRational().times(lead);
    Rational nearest = Rational.of(centre.plus(Rational.of(1, 2)).floor()).over(lead);
    return interval.contains(nearest) && equation.at(nearest).isZero()
        ? Optional.of(nearest)
        : Optional.empty();
  }
}
