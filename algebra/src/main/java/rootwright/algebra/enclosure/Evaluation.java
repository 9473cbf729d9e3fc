package rootwright.algebra.enclosure;

import java.math.BigInteger;

/**
 * The value of a polynomial at a point: the exact value lies within {@code error} of {@code value}.
 */
record Evaluation(Point value, Magnitude error) {

  /**
   * Horner's rule on numbers cut to {@code bits} bits, every cut booked into the error.
   *
   * @param ascending whole coefficients, constant term first, not empty
   */
  static Evaluation of(BigInteger[] ascending, Point at, int bits) {
    return at.isReal() ? real(ascending, at, bits) : complex(ascending, at, bits);
  }

  private static Evaluation real(BigInteger[] ascending, Point at, int bits) {
    BigInteger value = ascending[ascending.length - 1];
    int exponent = 0;
    Magnitude error = Magnitude.ZERO;
    Magnitude distance = at.absoluteUp();
    for (int k = ascending.length - 2; k >= 0; k--) {
      error = error.timesUp(distance);
      value = value.multiply(at.x());
      exponent += at.exponent();
      if (exponent <= 0) {
        value = value.add(ascending[k].shiftLeft(-exponent));
      } else {
        value = value.add(ascending[k].shiftRight(exponent));
        error = error.plusUp(Magnitude.powerOfTwo(exponent));
      }
      int surplus = value.bitLength() - bits;
      if (surplus > 0) {
        value = value.shiftRight(surplus);
        exponent += surplus;
        error = error.plusUp(Magnitude.powerOfTwo(exponent));
      }
    }
    return new Evaluation(new Point(value, BigInteger.ZERO, exponent), error);
  }

  private static Evaluation complex(BigInteger[] ascending, Point at, int bits) {
    BigInteger x = ascending[ascending.length - 1];
    BigInteger y = BigInteger.ZERO;
    int exponent = 0;
    Magnitude error = Magnitude.ZERO;
    Magnitude distance = at.absoluteUp();
    for (int k = ascending.length - 2; k >= 0; k--) {
      error = error.timesUp(distance);
      BigInteger nextX = x.multiply(at.x()).subtract(y.multiply(at.y()));
      y = x.multiply(at.y()).add(y.multiply(at.x()));
      x = nextX;
      exponent += at.exponent();
      if (exponent <= 0) {
        x = x.add(ascending[k].shiftLeft(-exponent));
      } else {
        x = x.add(ascending[k].shiftRight(exponent));
        error = error.plusUp(Magnitude.powerOfTwo(exponent));
      }
      int surplus = Math.max(x.bitLength(), y.bitLength()) - bits;
      if (surplus > 0) {
        x = x.shiftRight(surplus);
        y = y.shiftRight(surplus);
        exponent += surplus;
        // Two parts, each off by less than one place.
        error = error.plusUp(Magnitude.powerOfTwo(exponent + 1));
      }
    }
    return new Evaluation(new Point(x, y, exponent), error);
  }

  /** An upper bound for Σ |a_k|·r^k. */
  static Magnitude bound(BigInteger[] ascending, Magnitude r) {
    Magnitude sum = Magnitude.ZERO;
    for (int k = ascending.length - 1; k >= 0; k--) {
      sum = sum.timesUp(r).plusUp(Magnitude.up(ascending[k], 0));
    }
    return sum;
  }

  /** The whole coefficients of the derivative, constant term first; a single 0 for a constant. */
  static BigInteger[] derivative(BigInteger[] ascending) {
    if (ascending.length == 1) {
      return new BigInteger[] {BigInteger.ZERO};
    }
    BigInteger[] derived = new BigInteger[ascending.length - 1];
    for (int k = 1; k < ascending.length; k++) {
      derived[k - 1] = ascending[k].multiply(BigInteger.valueOf(k));
    }
    return derived;
  }

  /** A bound for |value| from above. */
  Magnitude absoluteUp() {
    return value.absoluteUp().plusUp(error);
  }
}
