package rootwright.algebra.enclosure;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A disc that holds exactly one root of a squarefree real polynomial. A centre on the real axis
 * makes the disc its own mirror image, so its root is real; any other disc misses the axis.
 */
record IsolatingDisc(Point centre, Magnitude radius) {

  /**
   * Proves each point to be near a root of its own. With distinct centres z_i the discs of radius
   * n·|P(z_i)| / (|a_n|·∏_{j≠i}|z_i − z_j|) hold all roots together, and a disc disjoint from the
   * others holds exactly one (Smith 1970, Journal of the ACM 17, pp 137–147).
   *
   * @param ascending whole coefficients of a polynomial of degree n
   * @param points n points counted so: one on the real axis once, one off the axis twice, for
   *     itself and its mirror image
   * @param bits length of the numbers the values are reckoned with
   * @return a disc for each point, empty if the discs of these points are not all disjoint
   */
  static Optional<List<IsolatingDisc>> around(
      BigInteger[] ascending, List<Point> points, int bits) {
    List<Point> all = new ArrayList<>(points);
    points.stream().filter(point -> !point.isReal()).map(Point::conjugate).forEach(all::add);
    List<Magnitude> radii = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Magnitude product = squaredDown(ascending[ascending.length - 1]);
      for (int j = 0; j < all.size(); j++) {
        if (j != i) {
          product = product.timesDown(points.get(i).minus(all.get(j)).squaredDown());
        }
      }
      if (product.isZero()) {
        return Optional.empty();
      }
      Magnitude value =
          Evaluation.of(ascending, points.get(i), bits)
              .absoluteUp()
              .timesUp(Magnitude.up(ascending.length - 1L, 0));
      radii.add(value.timesUp(value).overUp(product).rootUp());
    }
    return disjoint(points, all, radii) ? Optional.of(discs(points, radii)) : Optional.empty();
  }

  private static Magnitude squaredDown(BigInteger lead) {
    Magnitude down = Magnitude.down(lead, 0);
    return down.timesDown(down);
  }

  private static boolean disjoint(List<Point> points, List<Point> all, List<Magnitude> radii) {
    List<Magnitude> every = new ArrayList<>(radii);
    for (int i = 0; i < points.size(); i++) {
      if (!points.get(i).isReal()) {
        every.add(radii.get(i));
      }
    }
    for (int i = 0; i < points.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        Magnitude reach = every.get(i).plusUp(every.get(j));
        Magnitude gap = points.get(i).minus(all.get(j)).squaredDown();
        if (gap.compareTo(reach.timesUp(reach)) <= 0) {
          return false;
        }
      }
    }
    return true;
  }

  private static List<IsolatingDisc> discs(List<Point> points, List<Magnitude> radii) {
    List<IsolatingDisc> discs = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      discs.add(new IsolatingDisc(points.get(i), radii.get(i)));
    }
    return discs;
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
