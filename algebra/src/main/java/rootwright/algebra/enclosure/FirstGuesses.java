package rootwright.algebra.enclosure;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * Guesses at the roots of a polynomial in hardware arithmetic. Nothing is concluded from them: they
 * are where the exact work starts, and a bad guess only makes it longer.
 *
 * <p>The starting circles come from the Newton polygon of the coefficients (Bini 1996, Numerical
 * Algorithms 13, pp 179–200), the iteration is that of Aberth (1973, Mathematics of Computation 27,
 * pp 339–344) and Ehrlich (1967).
 */
final class FirstGuesses {

  private static final int MOST_ROUNDS = 60;

  /**
   * Wider spread of the sizes of the roots than this (as a power of two) is left to big numbers.
   */
  private static final double WIDEST_SPREAD = 200;

  private final int degree;
  private final double[] size;
  private final double[] startX;
  private final double[] startY;
  private final double[] startLogarithm;

  private FirstGuesses(BigInteger[] ascending) {
    degree = ascending.length - 1;
    size = new double[degree + 1];
    for (int k = 0; k <= degree; k++) {
      size[k] = logarithm(ascending[k]);
    }
    startX = new double[degree];
    startY = new double[degree];
    startLogarithm = new double[degree];
    placeOnCircles();
  }

  /**
   * Guesses at all roots.
   *
   * @param ascending whole coefficients, constant term first; neither the first nor the last is
   *     zero
   */
  static List<Point> of(BigInteger[] ascending) {
    FirstGuesses guesses = new FirstGuesses(ascending);
    return guesses.improved(ascending);
  }

  /** A guess at the principal k-th root of a number that is not zero. */
  static Point root(Point number, int k) {
    int surplus = Math.max(number.x().bitLength(), number.y().bitLength()) - 60;
    Point leading = number.trimmed(60);
    double x = leading.x().doubleValue();
    double y = leading.y().doubleValue();
    double angle = StrictMath.atan2(y, x) / k;
    double logarithm =
        (StrictMath.log(StrictMath.hypot(x, y)) / StrictMath.log(2)
                + Math.max(0, surplus)
                + number.exponent())
            / k;
    int whole = (int) StrictMath.floor(logarithm);
    double rest = StrictMath.pow(2, logarithm - whole);
    return point(StrictMath.cos(angle) * rest, StrictMath.sin(angle) * rest, whole);
  }

  /** The binary logarithm of |n|; −∞ for zero. */
  private static double logarithm(BigInteger n) {
    if (n.signum() == 0) {
      return Double.NEGATIVE_INFINITY;
    }
    int surplus = Math.max(0, n.bitLength() - 60);
    double leading = Math.abs(n.shiftRight(surplus).doubleValue());
    return StrictMath.log(leading) / StrictMath.log(2) + surplus;
  }

  /** Each edge of the upper hull of the points (k, log|a_k|) places its roots on one circle. */
  private void placeOnCircles() {
    int placed = 0;
    int from = 0;
    while (from < degree) {
      int to = from + 1;
      double steepest = Double.NEGATIVE_INFINITY;
      for (int k = from + 1; k <= degree; k++) {
        double slope = (size[k] - size[from]) / (k - from);
        if (slope >= steepest) {
          steepest = slope;
          to = k;
        }
      }
      for (int m = 0; m < to - from; m++) {
        double angle =
            2 * StrictMath.PI * ((double) m / (to - from) + (double) from / degree) + 0.7;
        startLogarithm[placed] = -steepest;
        startX[placed] = StrictMath.cos(angle);
        startY[placed] = StrictMath.sin(angle);
        placed++;
      }
      from = to;
    }
  }

  private List<Point> improved(BigInteger[] ascending) {
    int scale = (int) StrictMath.rint((size[0] - size[degree]) / degree);
    double[] x = new double[degree];
    double[] y = new double[degree];
    for (int i = 0; i < degree; i++) {
      double logarithm = startLogarithm[i] - scale;
      if (Math.abs(logarithm) > WIDEST_SPREAD) {
        return starts();
      }
      double radius = StrictMath.pow(2, logarithm);
      x[i] = startX[i] * radius;
      y[i] = startY[i] * radius;
    }
    new HardwareIteration(scaled(ascending, scale), x, y).run(MOST_ROUNDS);
    List<Point> points = new ArrayList<>(degree);
    for (int i = 0; i < degree; i++) {
      if (!Double.isFinite(x[i]) || !Double.isFinite(y[i])) {
        return starts();
      }
      points.add(point(x[i], y[i], scale));
    }
    return points;
  }

  /** The coefficients of P(2^scale·x), times a power of two that makes the largest about one. */
  private double[] scaled(BigInteger[] ascending, int scale) {
    double largest = Double.NEGATIVE_INFINITY;
    for (int k = 0; k <= degree; k++) {
      largest = Math.max(largest, size[k] + (double) k * scale);
    }
    double[] coefficients = new double[degree + 1];
    for (int k = 0; k <= degree; k++) {
      int surplus = Math.max(0, ascending[k].bitLength() - 60);
      long shift = (long) k * scale + surplus - (long) largest;
      coefficients[k] =
          shift < -2000
              ? 0
              : Math.scalb(ascending[k].shiftRight(surplus).doubleValue(), (int) shift);
    }
    return coefficients;
  }

  private List<Point> starts() {
    List<Point> points = new ArrayList<>(degree);
    for (int i = 0; i < degree; i++) {
      int whole = (int) StrictMath.floor(startLogarithm[i]);
      double rest = StrictMath.pow(2, startLogarithm[i] - whole);
      points.add(point(startX[i] * rest, startY[i] * rest, whole));
    }
    return points;
  }

  /** The exact value of (x + y·i)·2^scale. */
  private static Point point(double x, double y, int scale) {
    return part(x, scale).plus(turned(part(y, scale)));
  }

  private static Point part(double value, int scale) {
    if (value == 0) {
      return Point.ZERO;
    }
    int exponent = Math.getExponent(value) - 52;
    long mantissa = (long) Math.scalb(value, -exponent);
    return new Point(BigInteger.valueOf(mantissa), BigInteger.ZERO, exponent + scale);
  }

  private static Point turned(Point real) {
    return new Point(BigInteger.ZERO, real.x(), real.exponent());
  }
}
