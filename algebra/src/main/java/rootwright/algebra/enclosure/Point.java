package rootwright.algebra.enclosure;

import java.math.BigInteger;

/**
 * A complex number (x + y·i)·2^exponent, held exactly. Both parts share the exponent, so that a
 * number is cut to a length measured against its absolute value.
 */
record Point(BigInteger x, BigInteger y, int exponent) {

  static final Point ZERO = new Point(BigInteger.ZERO, BigInteger.ZERO, 0);
  static final Point ONE = new Point(BigInteger.ONE, BigInteger.ZERO, 0);

  boolean isReal() {
    return y.signum() == 0;
  }

  boolean isZero() {
    return x.signum() == 0 && y.signum() == 0;
  }

  /** A k with |number| &lt; 2^(k+1) and, for a number that is not zero, |number| ≥ 2^(k−1). */
  int top() {
    return isZero() ? Integer.MIN_VALUE / 4 : length() + exponent;
  }

  /** The bit length of the longer part. */
  int length() {
    return Math.max(x.bitLength(), y.bitLength());
  }

  Point conjugate() {
    return new Point(x, y.negate(), exponent);
  }

  Point negate() {
    return new Point(x.negate(), y.negate(), exponent);
  }

  Point plus(Point other) {
    if (exponent == other.exponent) {
      return new Point(x.add(other.x), y.add(other.y), exponent);
    }
    return exponent < other.exponent ? addCoarser(other) : other.addCoarser(this);
  }

  private Point addCoarser(Point other) {
    int gap = other.exponent - exponent;
    return new Point(x.add(other.x.shiftLeft(gap)), y.add(other.y.shiftLeft(gap)), exponent);
  }

  Point minus(Point other) {
    return plus(other.negate());
  }

  Point times(Point other) {
    int sum = exponent + other.exponent;
    if (isReal() || other.isReal()) {
      return new Point(
          x.multiply(other.x), isReal() ? x.multiply(other.y) : y.multiply(other.x), sum);
    }
    return new Point(
        x.multiply(other.x).subtract(y.multiply(other.y)),
        x.multiply(other.y).add(y.multiply(other.x)),
        sum);
  }

  /** The number cut to this many bits; each part moves by less than one unit of its new place. */
  Point trimmed(int bits) {
    int surplus = length() - bits;
    return surplus <= 0
        ? this
        : new Point(x.shiftRight(surplus), y.shiftRight(surplus), exponent + surplus);
  }

  /** The number cut to a multiple of 2^k; each part moves by less than 2^k. */
  Point trimmedTo(int k) {
    int surplus = k - exponent;
    return surplus <= 0 ? this : new Point(x.shiftRight(surplus), y.shiftRight(surplus), k);
  }

  /**
   * The quotient to about this many bits, without a bound for its error.
   *
   * @throws ArithmeticException if the divisor is zero
   */
  Point over(Point divisor, int bits) {
    Point above = trimmed(bits + 4);
    Point below = divisor.trimmed(bits + 4);
    if (below.isReal()) {
      int shift = Math.max(0, bits + 2 + below.x.bitLength() - above.length());
      return new Point(
          above.x.shiftLeft(shift).divide(below.x),
          above.y.shiftLeft(shift).divide(below.x),
          above.exponent - below.exponent - shift);
    }
    Point product = above.times(below.conjugate());
    BigInteger norm = below.x.multiply(below.x).add(below.y.multiply(below.y));
    int shift = Math.max(0, bits + 2 + norm.bitLength() - product.length());
    return new Point(
        product.x.shiftLeft(shift).divide(norm),
        product.y.shiftLeft(shift).divide(norm),
        product.exponent - 2 * below.exponent - shift);
  }

  /** |number|², not made smaller. */
  Magnitude squaredUp() {
    return Magnitude.squaredUp(x, y, exponent);
  }

  /** |number|², not made larger. */
  Magnitude squaredDown() {
    return Magnitude.squaredDown(x, y, exponent);
  }

  /** |number|, not made smaller. */
  Magnitude absoluteUp() {
    return isReal() ? Magnitude.up(x, exponent) : squaredUp().rootUp();
  }

  /** |number|, not made larger. */
  Magnitude absoluteDown() {
    return isReal() ? Magnitude.down(x, exponent) : squaredDown().rootDown();
  }
}
