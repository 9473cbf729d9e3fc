package rootwright.algebra.enclosure;

import java.math.BigInteger;
import java.util.List;

/**
 * Aberth's iteration (1973, Mathematics of Computation 27, pp 339–344) on numbers of any length,
 * without bounds: it moves points near the roots, and others prove how near.
 */
final class SimultaneousIteration {

  /** Length at which the mutual repulsion of the points is reckoned; it only steers. */
  private static final int STEERING_BITS = 64;

  private static final int MOST_ROUNDS = 200;

  private final BigInteger[] ascending;
  private final BigInteger[] derived;
  private final Point[] points;
  private final int bits;

  private SimultaneousIteration(BigInteger[] ascending, List<Point> start, int bits) {
    this.ascending = ascending;
    derived = Evaluation.derivative(ascending);
    points = start.toArray(Point[]::new);
    this.bits = bits;
  }

  /** Better points, reckoned with this many bits. */
  static List<Point> improve(BigInteger[] ascending, List<Point> start, int bits) {
    SimultaneousIteration iteration = new SimultaneousIteration(ascending, start, bits);
    iteration.run();
    return List.of(iteration.points);
  }

  private void run() {
    boolean[] done = new boolean[points.length];
    for (int round = 0; round < MOST_ROUNDS; round++) {
      boolean moving = false;
      for (int i = 0; i < points.length; i++) {
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
    Point at = points[i];
    Evaluation value = Evaluation.of(ascending, at, bits);
    if (value.value().isZero()) {
      return true;
    }
    Point slope = Evaluation.of(derived, at, bits).value();
    Point repulsion = repulsion(i);
    Point divisor = slope.minus(value.value().times(repulsion)).trimmed(bits);
    if (divisor.isZero()) {
      return false;
    }
    Point step = value.value().over(divisor, bits);
    points[i] = at.minus(step).trimmed(bits);
    boolean drownedInError = value.value().absoluteUp().compareTo(value.error().timesUp(2)) <= 0;
    return drownedInError || step.top() < points[i].top() - bits + 4;
  }

  private Point repulsion(int i) {
    Point sum = Point.ZERO;
    for (int j = 0; j < points.length; j++) {
      Point gap = points[i].minus(points[j]);
      if (!gap.isZero()) {
        sum = sum.plus(Point.ONE.over(gap, STEERING_BITS)).trimmed(STEERING_BITS + 8);
      }
    }
    return sum;
  }
}
