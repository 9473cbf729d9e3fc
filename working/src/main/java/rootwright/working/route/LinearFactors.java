package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.factor.RationalRoot;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * A polynomial split as {@code lead·∏(x − point)^multiplicity}, if it splits over the rational
 * numbers.
 */
record LinearFactors(Rational lead, List<RationalRoot> points) {

  LinearFactors {
    points = List.copyOf(points);
  }

  static Optional<LinearFactors> of(Polynomial polynomial) {
    if (polynomial.degree() < 1) {
      return Optional.empty();
    }
    List<RationalRoot> roots = new ArrayList<>(RationalRoots.of(polynomial));
    int found = roots.stream().mapToInt(RationalRoot::multiplicity).sum();
    return found == polynomial.degree()
        ? Optional.of(new LinearFactors(polynomial.lead(), roots))
        : Optional.empty();
  }

  /** The degree of the polynomial. */
  int degree() {
    return points.stream().mapToInt(RationalRoot::multiplicity).sum();
  }

  /** Whether no point is repeated. */
  boolean areDistinct() {
    return points.stream().allMatch(point -> point.multiplicity() == 1);
  }
}
