package rootwright.algebra.local;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.SplittableRandom;

/** Polynomials over an extension field, just enough of them to find a root. */
final class ExtensionPolynomials {

  private final ExtensionField field;

  ExtensionPolynomials(ExtensionField field) {
    this.field = field;
  }

  /** A root of a monic squarefree polynomial that splits into linear factors over the field. */
  long[] root(long[][] split, SplittableRandom random) {
    long[][] part = split;
    BigInteger half = field.size().subtract(BigInteger.ONE).shiftRight(1);
    while (part.length > 2) {
      long[][] guess = {field.any(random), field.constant(field.prime().one())};
      long[][] power = power(guess, half, part);
      long[][] shifted = power.length == 0 ? new long[][] {field.zero()} : power;
      shifted[0] = field.minus(shifted[0], field.constant(field.prime().one()));
      long[][] common = gcd(part, trim(shifted));
      if (common.length > 1 && common.length < part.length) {
        // The smaller of the two parts; its cofactor is found the other way round.
        part = 2 * common.length <= part.length + 1 ? common : quotient(part, common);
      }
    }
    return field.minus(field.zero(), part[0]);
  }

  private static long[][] trim(long[][] a) {
    int length = a.length;
    while (length > 0 && ExtensionField.isZero(a[length - 1])) {
      length--;
    }
    return Arrays.copyOf(a, length);
  }

  private long[][] times(long[][] a, long[][] b) {
    if (a.length == 0 || b.length == 0) {
      return new long[0][];
    }
    long[][] product = new long[a.length + b.length - 1][];
    Arrays.setAll(product, k -> field.zero());
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < b.length; j++) {
        long[] term = field.times(a[i], b[j]);
        for (int k = 0; k < term.length; k++) {
          product[i + j][k] = field.prime().plus(product[i + j][k], term[k]);
        }
      }
    }
    return trim(product);
  }

  private long[][] divide(long[][] a, long[][] monic) {
    int degree = monic.length - 1;
    long[][] rest = a.clone();
    for (int top = a.length - 1; top >= degree; top--) {
      long[] factor = rest[top];
      if (!ExtensionField.isZero(factor)) {
        for (int k = 0; k < degree; k++) {
          int place = top - degree + k;
          rest[place] = field.minus(rest[place], field.times(factor, monic[k]));
        }
      }
    }
    return rest;
  }

  private long[][] remainder(long[][] a, long[][] monic) {
    return trim(Arrays.copyOf(divide(a, monic), Math.min(a.length, monic.length - 1)));
  }

  private long[][] quotient(long[][] a, long[][] monic) {
    return Arrays.copyOfRange(divide(a, monic), monic.length - 1, a.length);
  }

  private long[][] monic(long[][] a) {
    if (a.length == 0) {
      return a;
    }
    long[] inverse = field.inverse(a[a.length - 1]);
    long[][] monic = new long[a.length][];
    Arrays.setAll(monic, k -> field.times(a[k], inverse));
    return monic;
  }

  private long[][] gcd(long[][] a, long[][] b) {
    long[][] left = a;
    long[][] right = monic(b);
    while (right.length > 0) {
      long[][] next = monic(remainder(left, right));
      left = right;
      right = next;
    }
    return left;
  }

  private long[][] power(long[][] base, BigInteger exponent, long[][] monic) {
    long[][] result = {field.constant(field.prime().one())};
    for (int bit = exponent.bitLength() - 1; bit >= 0; bit--) {
      result = remainder(times(result, result), monic);
      if (exponent.testBit(bit)) {
        result = remainder(times(result, base), monic);
      }
    }
    return result;
  }
}
