package rootwright.working.route;

import java.util.List;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.Inverse;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.working.ask.Asked;

/**
 * A route to the polynomial with the roots y = f(r), for any f without a pole at a root, by way of
 * y as a polynomial in r of lower degree than P.
 */
abstract class NewRootRoute implements Route {

  private final int highestDegree;

  /** A route that is a working for a person up to this degree. */
  NewRootRoute(int highestDegree) {
    this.highestDegree = highestDegree;
  }

  @Override
  public final Attempt attempt(Asked asked) {
    List<OneRootMap> maps = OneRootMap.of(asked);
    int n = asked.problem().degree();
    if (maps.isEmpty()) {
      return OneRootMap.SEVERAL_ROOTS;
    } else if (n < 2) {
      return new Attempt.Declined("there is one root only");
    } else if (n > highestDegree) {
      return new Attempt.Declined(tooLarge());
    }
    // Without e_n/r, which the last map does without, the reduced form comes sooner.
    OneRootMap map = maps.get(maps.size() - 1);
    ResidueAlgebra algebra = ResidueAlgebra.of(asked.problem().polynomial());
    return algebra.inverse(map.f().denominator()) instanceof Inverse.Inverted inverted
        ? worked(asked, map, algebra.times(map.f().numerator(), inverted.value()))
        : Reasons.ZERO_DENOMINATOR;
  }

  /** Why the route is not for higher degrees, as a clause. */
  abstract String tooLarge();

  /** The working, the map being equal to this polynomial in its root. */
  abstract Attempt worked(Asked asked, OneRootMap map, Polynomial reduced);
}
