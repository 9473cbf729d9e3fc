package rootwright.algebra.enclosure;

import java.math.BigInteger;

/**
 * A polynomial with whole coefficients, prepared for evaluation over and over: each coefficient
 * also as 61 bits times a power of two, and as a bound for its absolute value.
 */
final class WholeCoefficients {

  /** The most bits a value may be asked for and still be reckoned in machine words. */
  static final int WORD_BITS = 56;

  private static final int MANTISSA_BITS = 61;

  /** The product of two mantissas is kept in units of this power of two. */
  private static final int PRODUCT_SHIFT = 60;

  private final BigInteger[] ascending;
  private final long[] mantissa;
  private final int[] exponent;
  private final Magnitude[] size;

  /** Takes the coefficients, constant term first; at least one. */
  WholeCoefficients(BigInteger[] ascending) {
    this.ascending = ascending;
    mantissa = new long[ascending.length];
    exponent = new int[ascending.length];
    size = new Magnitude[ascending.length];
    for (int k = 0; k < ascending.length; k++) {
      int surplus = Math.max(0, ascending[k].bitLength() - MANTISSA_BITS);
      mantissa[k] = ascending[k].shiftRight(surplus).longValue();
      exponent[k] = surplus;
      size[k] = Magnitude.up(ascending[k], 0);
    }
  }

  int degree() {
    return ascending.length - 1;
  }

  BigInteger lead() {
    return ascending[degree()];
  }

  /** The derivative; a single 0 for a constant. */
  WholeCoefficients derivative() {
    if (ascending.length == 1) {
      return new WholeCoefficients(new BigInteger[] {BigInteger.ZERO});
    }
    BigInteger[] derived = new BigInteger[degree()];
    for (int k = 1; k < ascending.length; k++) {
      derived[k - 1] = ascending[k].multiply(BigInteger.valueOf(k));
    }
    return new WholeCoefficients(derived);
  }

  /** An upper bound for Σ |a_k|·r^k. */
  Magnitude boundAt(Magnitude r) {
    Magnitude sum = Magnitude.ZERO;
    for (int k = degree(); k >= 0; k--) {
      sum = sum.timesUp(r).plusUp(size[k]);
    }
    return sum;
  }

  /**
   * The value at a point by Horner's rule on numbers of about {@code bits} bits, every bit that is
   * cut off booked into the error.
   */
  Evaluation at(Point point, int bits) {
    if (bits <= WORD_BITS && point.length() <= MANTISSA_BITS && !point.isZero()) {
      return inWords(point);
    }
    return point.isReal() ? real(point, bits) : complex(point, bits);
  }

  private Evaluation real(Point at, int bits) {
    BigInteger value = lead();
    int scale = 0;
    Magnitude error = Magnitude.ZERO;
    Magnitude distance = at.absoluteUp();
    for (int k = degree() - 1; k >= 0; k--) {
      error = error.timesUp(distance);
      value = value.multiply(at.x());
      scale += at.exponent();
      if (scale <= 0) {
        value = value.add(ascending[k].shiftLeft(-scale));
      } else {
        value = value.add(ascending[k].shiftRight(scale));
        error = error.plusUp(Magnitude.powerOfTwo(scale));
      }
      int surplus = value.bitLength() - bits;
      if (surplus > 0) {
        value = value.shiftRight(surplus);
        scale += surplus;
        error = error.plusUp(Magnitude.powerOfTwo(scale));
      }
    }
    return new Evaluation(new Point(value, BigInteger.ZERO, scale), error);
  }

  private Evaluation complex(Point at, int bits) {
    BigInteger x = lead();
    BigInteger y = BigInteger.ZERO;
    int scale = 0;
    Magnitude error = Magnitude.ZERO;
    Magnitude distance = at.absoluteUp();
    for (int k = degree() - 1; k >= 0; k--) {
      error = error.timesUp(distance);
      BigInteger nextX = x.multiply(at.x()).subtract(y.multiply(at.y()));
      y = x.multiply(at.y()).add(y.multiply(at.x()));
      x = nextX;
      scale += at.exponent();
      if (scale <= 0) {
        x = x.add(ascending[k].shiftLeft(-scale));
      } else {
        x = x.add(ascending[k].shiftRight(scale));
        error = error.plusUp(Magnitude.powerOfTwo(scale));
      }
      int surplus = Math.max(x.bitLength(), y.bitLength()) - bits;
      if (surplus > 0) {
        x = x.shiftRight(surplus);
        y = y.shiftRight(surplus);
        scale += surplus;
        // Two parts, each off by less than one place.
        error = error.plusUp(Magnitude.powerOfTwo(scale + 1));
      }
    }
    return new Evaluation(new Point(x, y, scale), error);
  }

  /** Horner's rule on machine words, for a point of at most 61 bits. */
  private Evaluation inWords(Point at) {
    int rise = MANTISSA_BITS - at.length();
    // Both factors of a product go up two places, so that its high word is the product over 2^60.
    long zx = at.x().longValue() << (rise + 2);
    long zy = at.y().longValue() << (rise + 2);
    int zScale = at.exponent() - rise;
    Magnitude distance = at.absoluteUp();
    long x = mantissa[degree()];
    long y = 0;
    int scale = exponent[degree()];
    Magnitude error = cutFrom(degree());
    for (int k = degree() - 1; k >= 0; k--) {
      int up = x == 0 && y == 0 ? 0 : MANTISSA_BITS - length(x, y);
      if (up < 0) {
        x >>= -up;
        y >>= -up;
        error = error.plusUp(Magnitude.powerOfTwo(scale - up + 1));
      } else {
        x <<= up;
        y <<= up;
      }
      long nextX = Math.multiplyHigh(x << 2, zx) - Math.multiplyHigh(y << 2, zy);
      y = Math.multiplyHigh(x << 2, zy) + Math.multiplyHigh(y << 2, zx);
      x = nextX;
      scale += zScale - up + PRODUCT_SHIFT;
      // Each high word is a floor: one part is off by less than one place, the other by two.
      error = error.timesUp(distance).plusUp(Magnitude.up(3, scale));
      if (mantissa[k] != 0) {
        int coefficientLength = length(mantissa[k], 0) + exponent[k] - scale;
        int down = Math.max(length(x, y), coefficientLength) - MANTISSA_BITS;
        if (down > 0) {
          x >>= Math.min(down, Long.SIZE - 1);
          y >>= Math.min(down, Long.SIZE - 1);
          scale += down;
          error = error.plusUp(Magnitude.powerOfTwo(scale + 1));
        }
        int shift = exponent[k] - scale;
        if (shift >= 0) {
          x += mantissa[k] << shift;
        } else {
          x += mantissa[k] >> Math.min(-shift, Long.SIZE - 1);
          error = error.plusUp(Magnitude.powerOfTwo(scale));
        }
        error = error.plusUp(cutFrom(k));
      }
    }
    return new Evaluation(new Point(BigInteger.valueOf(x), BigInteger.valueOf(y), scale), error);
  }

  /** What the mantissa of a coefficient may lack. */
  private Magnitude cutFrom(int k) {
    return exponent[k] == 0 ? Magnitude.ZERO : Magnitude.powerOfTwo(exponent[k]);
  }

  /** The bit length of the longer of |x| and |y|. */
  private static int length(long x, long y) {
    return Long.SIZE - Long.numberOfLeadingZeros(Math.abs(x) | Math.abs(y));
  }
}
