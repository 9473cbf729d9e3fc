package rootwright.algebra.enclosure;

import java.math.BigInteger;

/**
 * A number that is not negative, held to about 31 bits, whose every operation says on which side of
 * the truth its result lies. It carries the radii, where a few bits are enough and outward rounding
 * is everything.
 *
 * @param mantissa zero, or at least 2^30 and below 2^31
 * @param exponent the power of two the mantissa is multiplied by
 */
record Magnitude(long mantissa, int exponent) implements Comparable<Magnitude> {

  private static final int BITS = 31;
  private static final long LIMIT = 1L << BITS;

  static final Magnitude ZERO = new Magnitude(0, 0);
  static final Magnitude ONE = new Magnitude(1L << (BITS - 1), 1 - BITS);

  /** 2^k. */
  static Magnitude powerOfTwo(int k) {
    return new Magnitude(1L << (BITS - 1), k + 1 - BITS);
  }

  /** {@code value}·2^exponent for any value that is not negative, not made smaller. */
  static Magnitude up(long value, int exponent) {
    if (value == 0) {
      return ZERO;
    }
    int surplus = Long.SIZE - Long.numberOfLeadingZeros(value) - BITS;
    if (surplus <= 0) {
      return new Magnitude(value << -surplus, exponent + surplus);
    }
    long kept = value >>> surplus;
    if (kept << surplus != value) {
      kept++;
    }
    return kept == LIMIT
        ? new Magnitude(LIMIT >>> 1, exponent + surplus + 1)
        : new Magnitude(kept, exponent + surplus);
  }

  /** {@code value}·2^exponent for any value that is not negative, not made larger. */
  static Magnitude down(long value, int exponent) {
    if (value == 0) {
      return ZERO;
    }
    int surplus = Long.SIZE - Long.numberOfLeadingZeros(value) - BITS;
    return new Magnitude(surplus <= 0 ? value << -surplus : value >>> surplus, exponent + surplus);
  }

  /** |value|·2^exponent, not made smaller. */
  static Magnitude up(BigInteger value, int exponent) {
    int length = value.bitLength();
    if (length < Long.SIZE - 1) {
      return up(Math.abs(value.longValue()), exponent);
    }
    int surplus = length - Long.SIZE + 2;
    // The shift floors; one more covers what it cut off, for either sign.
    return up(Math.abs(value.shiftRight(surplus).longValue()) + 1, exponent + surplus);
  }

  /** |value|·2^exponent, not made larger. */
  static Magnitude down(BigInteger value, int exponent) {
    int length = value.bitLength();
    if (length < Long.SIZE - 1) {
      return down(Math.abs(value.longValue()), exponent);
    }
    int surplus = length - Long.SIZE + 2;
    long kept = Math.abs(value.shiftRight(surplus).longValue());
    return down(value.signum() < 0 ? kept - 1 : kept, exponent + surplus);
  }

  /** |value|, not made smaller. */
  static Magnitude up(Dyadic value) {
    return up(value.mantissa(), value.exponent());
  }

  /** |value|, not made larger. */
  static Magnitude down(Dyadic value) {
    return down(value.mantissa(), value.exponent());
  }

  /** (x² + y²)·4^exponent, not made smaller. */
  static Magnitude squaredUp(BigInteger x, BigInteger y, int exponent) {
    Magnitude a = up(x, exponent);
    Magnitude b = up(y, exponent);
    return a.timesUp(a).plusUp(b.timesUp(b));
  }

  /** (x² + y²)·4^exponent, not made larger. */
  static Magnitude squaredDown(BigInteger x, BigInteger y, int exponent) {
    Magnitude a = down(x, exponent);
    Magnitude b = down(y, exponent);
    return a.timesDown(a).plusDown(b.timesDown(b));
  }

  /** x² + y², not made larger. */
  static Magnitude squaredDown(Dyadic x, Dyadic y) {
    Magnitude a = down(x);
    Magnitude b = down(y);
    return a.timesDown(a).plusDown(b.timesDown(b));
  }

  boolean isZero() {
    return mantissa == 0;
  }

  /** The least k with magnitude &lt; 2^k; {@link Integer#MIN_VALUE} for zero. */
  int top() {
    return isZero() ? Integer.MIN_VALUE : exponent + BITS;
  }

  Magnitude timesUp(Magnitude other) {
    return up(mantissa * other.mantissa, exponent + other.exponent);
  }

  Magnitude timesDown(Magnitude other) {
    return down(mantissa * other.mantissa, exponent + other.exponent);
  }

  Magnitude timesUp(int factor) {
    return up(mantissa * factor, exponent);
  }

  Magnitude plusUp(Magnitude other) {
    if (isZero()) {
      return other;
    }
    if (other.isZero()) {
      return this;
    }
    Magnitude large = exponent >= other.exponent ? this : other;
    Magnitude small = exponent >= other.exponent ? other : this;
    int gap = large.exponent - small.exponent;
    if (gap > BITS) {
      return up(large.mantissa + 1, large.exponent);
    }
    return up((large.mantissa << gap) + small.mantissa, small.exponent);
  }

  Magnitude plusDown(Magnitude other) {
    if (isZero()) {
      return other;
    }
    if (other.isZero()) {
      return this;
    }
    Magnitude large = exponent >= other.exponent ? this : other;
    Magnitude small = exponent >= other.exponent ? other : this;
    int gap = large.exponent - small.exponent;
    return gap > BITS ? large : down((large.mantissa << gap) + small.mantissa, small.exponent);
  }

  /** The difference, not made larger; zero if it is negative. */
  Magnitude minusDown(Magnitude other) {
    if (other.isZero()) {
      return this;
    }
    if (compareTo(other) <= 0) {
      return ZERO;
    }
    int gap = exponent - other.exponent;
    if (gap > BITS) {
      // The subtrahend is below half a unit of the last place.
      return down((mantissa << 1) - 1, exponent - 1);
    }
    return down((mantissa << gap) - other.mantissa, other.exponent);
  }

  /**
   * The quotient, not made smaller.
   *
   * @throws ArithmeticException if the divisor is zero
   */
  Magnitude overUp(Magnitude divisor) {
    long quotient = (mantissa << BITS) / divisor.mantissa;
    return isZero() ? ZERO : up(quotient + 1, exponent - divisor.exponent - BITS);
  }

  /** The square root, not made larger. */
  Magnitude rootDown() {
    Magnitude above = rootUp();
    // The root is correct to one unit in the last place, so one unit less is below it.
    return above.isZero() ? ZERO : down(above.mantissa - 1, above.exponent);
  }

  /** The square root, not made smaller. */
  Magnitude rootUp() {
    if (isZero()) {
      return ZERO;
    }
    int shift = ((exponent - BITS) & 1) == 0 ? BITS : BITS - 1;
    long radicand = mantissa << shift;
    // The mantissa is below 2^31, hence the radicand below 2^62; Newton from above falls to the
    // floor of the root.
    long root = 1L << ((Long.SIZE + 1 - Long.numberOfLeadingZeros(radicand)) / 2);
    while (true) {
      long next = (root + radicand / root) >>> 1;
      if (next >= root) {
        break;
      }
      root = next;
    }
    return up(root * root == radicand ? root : root + 1, (exponent - shift) / 2);
  }

  Dyadic toDyadic() {
    return new Dyadic(BigInteger.valueOf(mantissa), exponent);
  }

  @Override
  public int compareTo(Magnitude other) {
    if (isZero() || other.isZero() || exponent == other.exponent) {
      return Long.compare(mantissa, other.mantissa);
    }
    return Integer.compare(exponent, other.exponent);
  }
}
