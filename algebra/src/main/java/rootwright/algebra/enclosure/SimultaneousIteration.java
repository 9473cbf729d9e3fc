package rootwright.algebra.enclosure;

import java.util.List;
import rootwright.algebra.stop.Stop;

/**
 * Aberth's iteration (1973, Mathematics of Computation 27, pp 339–344) on numbers of any length,
 * without bounds: it moves points near the roots, and others prove how near.
 */
final class SimultaneousIteration {

  /** Length at which the mutual repulsion of the points is reckoned; it only steers. */
  private static final int STEERING_BITS = 64;

  private static final int MOST_ROUNDS = 200;

  private final WholeCoefficients polynomial;
  private final WholeCoefficients derived;
  private final List<Point> points;
  private final int bits;

  private SimultaneousIteration(WholeCoefficients polynomial, List<Point> points, int bits) {
    this.polynomial = polynomial;
    derived = polynomial.derivative();
    this.points = points;
    this.bits = bits;
  }

  /**
   * Moves the points that are not settled nearer to the roots, reckoning with this many bits.
   *
   * @param points changed in place
   */
  static void improve(
      WholeCoefficients polynomial, List<Point> points, boolean[] settled, int bits) {
    new SimultaneousIteration(polynomial, points, bits).run(settled.clone());
  }

  private void run(boolean[] done) {
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Stop.ifUnwanted();
      boolean moving = false;
      for (int i = 0; i < points.size(); i++) {
        if (!done[i]) {
          done[i] = settles(i);
          moving |= !done[i];
        }
      }
      if (!moving) {
        return;
      }
    }
  }

  /** Moves one point; whether it will not get better at this length. */
  private boolean settles(int i) {
    Point at = points.get(i);
    Evaluation value = polynomial.at(at, bits);
    if (value.value().isZero()) {
      return true;
    }
    Point slope = derived.at(at, bits).value();
    Point repulsion = repulsion(i);
    Point divisor = slope.minus(value.value().times(repulsion)).trimmed(bits);
    if (divisor.isZero()) {
      return false;
    }
    Point step = value.value().over(divisor, bits);
    Point moved = at.minus(step).trimmed(bits);
    points.set(i, moved);
    boolean drownedInError = value.value().absoluteUp().compareTo(value.error().timesUp(2)) <= 0;
    return drownedInError || step.top() < moved.top() - bits + 4;
  }

  private Point repulsion(int i) {
    Point sum = Point.ZERO;
    for (int j = 0; j < points.size(); j++) {
      Point gap = points.get(i).minus(points.get(j));
      if (!gap.isZero()) {
        sum = sum.plus(Point.ONE.over(gap, STEERING_BITS)).trimmed(STEERING_BITS + 8);
      }
    }
    return sum;
  }
}
