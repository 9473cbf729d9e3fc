package rootwright.algebra.modular;

import java.math.BigInteger;
import java.util.Arrays;

/**
 * Polynomials in one unknown over a prime field, as arrays of representatives, constant term first,
 * without leading zeros; the zero polynomial is the empty array. No array is ever changed.
 */
public final class FieldPolynomials {

  private final OddModulus field;

  /** Polynomials over the field of residues; the modulus must be prime. */
  public FieldPolynomials(OddModulus field) {
    this.field = field;
  }

  /** The field. */
  public OddModulus field() {
    return field;
  }

  /** The polynomial x. */
  public long[] unknown() {
    return new long[] {0, field.one()};
  }

  /** Without leading zeros. */
  public static long[] trim(long[] a) {
    int length = a.length;
    while (length > 0 && a[length - 1] == 0) {
      length--;
    }
    return length == a.length ? a : Arrays.copyOf(a, length);
  }

  /** The difference. */
  public long[] minus(long[] a, long[] b) {
    long[] difference = Arrays.copyOf(a, Math.max(a.length, b.length));
    for (int k = 0; k < b.length; k++) {
      difference[k] = field.minus(difference[k], b[k]);
    }
    return trim(difference);
  }

  /** The product. */
  public long[] times(long[] a, long[] b) {
    if (a.length == 0 || b.length == 0) {
      return new long[0];
    }
    long[] product = new long[a.length + b.length - 1];
    for (int k = 0; k < product.length; k++) {
      int from = Math.max(0, k - b.length + 1);
      int stop = Math.min(a.length - 1, k);
      product[k] = field.convolution(a, from, b, k - from, stop - from + 1);
    }
    return trim(product);
  }

  /** Divided by the lead. */
  public long[] monic(long[] a) {
    if (a.length == 0 || a[a.length - 1] == field.one()) {
      return a;
    }
    long inverse = field.inverse(a[a.length - 1]);
    long[] monic = a.clone();
    for (int k = 0; k < monic.length; k++) {
      monic[k] = field.times(monic[k], inverse);
    }
    return monic;
  }

  /** The derivative. */
  public long[] derivative(long[] a) {
    long[] derived = new long[Math.max(0, a.length - 1)];
    for (int k = 0; k < derived.length; k++) {
      derived[k] = field.times(a[k + 1], field.represent(k + 1L));
    }
    return trim(derived);
  }

  /** The remainder on division by a monic polynomial. */
  public long[] remainder(long[] a, long[] monic) {
    return trim(Arrays.copyOf(divide(a, monic), Math.min(a.length, monic.length - 1)));
  }

  /** The quotient on division by a monic polynomial. */
  public long[] quotient(long[] a, long[] monic) {
    int degree = monic.length - 1;
    return a.length <= degree
        ? new long[0]
        : Arrays.copyOfRange(divide(a, monic), degree, a.length);
  }

  /** Remainder below, quotient from the place of the divisor's degree on. */
  private long[] divide(long[] a, long[] monic) {
    int degree = monic.length - 1;
    long[] rest = a.clone();
    for (int top = a.length - 1; top >= degree; top--) {
      long factor = rest[top];
      if (factor != 0) {
        for (int k = 0; k < degree; k++) {
          int place = top - degree + k;
          rest[place] = field.minus(rest[place], field.times(factor, monic[k]));
        }
      }
    }
    return rest;
  }

  /** The monic greatest common divisor. */
  public long[] gcd(long[] a, long[] b) {
    long[] left = monic(a);
    long[] right = monic(b);
    while (right.length > 0) {
      long[] next = monic(remainder(left, right));
      left = right;
      right = next;
    }
    return left;
  }

  /** The power modulo a monic polynomial of positive degree. */
  public long[] power(long[] base, BigInteger exponent, long[] monic) {
    long[] result = remainder(new long[] {field.one()}, monic);
    long[] reduced = remainder(base, monic);
    for (int bit = exponent.bitLength() - 1; bit >= 0; bit--) {
      result = remainder(times(result, result), monic);
      if (exponent.testBit(bit)) {
        result = remainder(times(result, reduced), monic);
      }
    }
    return result;
  }
}
