package rootwright.working.route;

import java.math.BigInteger;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.roots.Orbit;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;

/**
 * An ask with two values A and B, according to how the roots are named: A + B is symmetric, and A −
 * B is a symmetric multiple of the product of the differences, so that its square is a multiple of
 * the discriminant (Lagrange 1771, Réflexions).
 */
final class SumAndDifference implements Route {

  @Override
  public String name() {
    return "sum-and-difference";
  }

  @Override
  public String title() {
    return TwoPartners.TITLE;
  }

  @Override
  public String teaches() {
    return "Of two partners, the sum and the square of the difference are symmetric.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Problem problem = asked.problem();
    if (asked.quotient().isPresent()) {
      return new Attempt.Declined("the ask has one value, whatever the roots are called");
    } else if (problem.degree() < 2 || problem.degree() > 3) {
      return new Attempt.Declined("this is for two or three roots");
    } else if (asked.formula().contains(SumAndDifference::isSymmetricPart)) {
      // Such a part may be zero, and then the partners are one although they look different.
      return new Attempt.Declined("sums over all the roots stand beside single roots in it");
    } else if (asked.singleRoot().isPresent() || asked.expression().isEmpty()) {
      return new Attempt.Declined("the ask does not come in two partners");
    }
    RationalFunction ask = asked.expression().get().lowestTerms();
    Orbit orbit = Orbit.of(ask, problem.degree());
    if (!orbit.size().equals(BigInteger.TWO)) {
      return new Attempt.Declined(
          "renaming the roots makes %s expressions of it, not two".formatted(orbit.size()));
    }
    Optional<TwoPartners> partners = TwoPartners.of(problem, ask);
    return partners.map(TwoPartners::worked).orElse(Reasons.TOO_LONG);
  }

  private static boolean isSymmetricPart(Formula part) {
    return part instanceof Formula.Family || part instanceof Formula.Aggregate;
  }
}
