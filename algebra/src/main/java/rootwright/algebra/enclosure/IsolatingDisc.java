package rootwright.algebra.enclosure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * A disc that holds exactly one root of a squarefree real polynomial. A centre on the real axis
 * makes the disc its own mirror image, so its root is real; any other disc misses the axis.
 */
record IsolatingDisc(Point centre, Magnitude radius) {

  /**
   * Proves points to be near a root of their own. With distinct centres z_i the discs of radius
   * n·|P(z_i)| / (|a_n|·∏_{j≠i}|z_i − z_j|) hold all roots together, and a disc disjoint from the
   * others holds exactly one (Smith 1970, Journal of the ACM 17, pp 137–147).
   *
   * @param polynomial of degree n, squarefree
   * @param points n points counted so: one on the real axis once, one off the axis twice, for
   *     itself and its mirror image
   * @param values the values of the polynomial at the points
   * @return for each point its disc, empty if it is not disjoint from all others
   */
  static List<Optional<IsolatingDisc>> around(
      WholeCoefficients polynomial, List<Point> points, List<Evaluation> values) {
    Gaps gaps = new Gaps(points);
    Magnitude lead = Magnitude.down(polynomial.lead(), 0);
    Magnitude degree = Magnitude.up(polynomial.degree(), 0);
    List<IsolatingDisc> discs = new ArrayList<>(points.size());
    for (int i = 0; i < points.size(); i++) {
      Magnitude product = lead.timesDown(lead).timesDown(gaps.squaredProduct(i));
      if (product.isZero()) {
        // Two centres coincide, and nothing can be said about any disc.
        return Collections.nCopies(points.size(), Optional.empty());
      }
      Magnitude value = values.get(i).absoluteUp().timesUp(degree);
      Magnitude radius = value.timesUp(value).overUp(product).rootUp();
      discs.add(new IsolatingDisc(points.get(i), radius));
    }
    return disjoint(discs, gaps);
  }

  private static List<Optional<IsolatingDisc>> disjoint(List<IsolatingDisc> discs, Gaps gaps) {
    boolean[] meeting = new boolean[discs.size()];
    for (int i = 0; i < discs.size(); i++) {
      for (int j = 0; j <= i; j++) {
        Magnitude reach = discs.get(i).radius.plusUp(discs.get(j).radius);
        Magnitude square = reach.timesUp(reach);
        // The mirror images of the two are as far apart as the two themselves.
        boolean meet =
            (i != j && gaps.squared(i, j).compareTo(square) <= 0)
                || (!discs.get(i).isReal()
                    && !discs.get(j).isReal()
                    && gaps.squaredToMirror(i, j).compareTo(square) <= 0);
        meeting[i] |= meet;
        meeting[j] |= meet;
      }
    }
    List<Optional<IsolatingDisc>> proved = new ArrayList<>(discs.size());
    for (int i = 0; i < discs.size(); i++) {
      proved.add(meeting[i] ? Optional.empty() : Optional.of(discs.get(i)));
    }
    return proved;
  }

  boolean isReal() {
    return centre.isReal();
  }

  /** Whether the radius is at most 2^−bits·|centre|; a disc round zero is never small enough. */
  boolean isSmall(int bits) {
    Magnitude allowed = centre.absoluteDown();
    return !allowed.isZero()
        && radius.compareTo(new Magnitude(allowed.mantissa(), allowed.exponent() - bits)) <= 0;
  }

  ComplexBall ball() {
    return new ComplexBall(
        new Dyadic(centre.x(), centre.exponent()),
        new Dyadic(centre.y(), centre.exponent()),
        radius.toDyadic());
  }
}
