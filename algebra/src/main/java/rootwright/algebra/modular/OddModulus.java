package rootwright.algebra.modular;

import java.math.BigInteger;

/**
 * Arithmetic modulo an odd number m under 2⁶¹ in machine words, by Montgomery's representation: a
 * residue x is kept as x·2⁶⁴ modulo m, so that a product needs no division (Montgomery, Mathematics
 * of Computation 44 (1985) 519–521).
 *
 * <p>Every {@code long} that is passed in or handed out, except by {@link #represent} and {@link
 * #residue}, is such a representative from 0 to m − 1.
 */
public final class OddModulus implements WordModulus {

  /** Moduli must stay under this power of two. */
  public static final int BITS = 61;

  /** Products summed before the high word is brought down: 2⁶¹ + 16·2⁵⁸ is still under 2⁶³. */
  private static final int CHUNK = 16;

  private final long modulus;
  private final long negatedInverse;
  private final long one;
  private final long square;

  private OddModulus(long modulus) {
    this.modulus = modulus;
    long inverse = modulus;
    // Newton's iteration doubles the number of right bits; an odd number inverts itself modulo 8.
    for (int bits = 3; bits < 64; bits *= 2) {
      inverse *= 2 - modulus * inverse;
    }
    negatedInverse = -inverse;
    BigInteger m = BigInteger.valueOf(modulus);
    one = BigInteger.ONE.shiftLeft(64).mod(m).longValueExact();
    square = BigInteger.ONE.shiftLeft(128).mod(m).longValueExact();
  }

  /**
   * Arithmetic modulo this number.
   *
   * @throws IllegalArgumentException if the modulus is not an odd number from 3 to 2⁶¹ − 1
   */
  public static OddModulus of(long modulus) {
    if (modulus < 3 || modulus % 2 == 0 || modulus >>> BITS != 0) {
      throw new IllegalArgumentException("not an odd modulus from 3 to 2^61 - 1: " + modulus);
    }
    return new OddModulus(modulus);
  }

  @Override
  public long modulus() {
    return modulus;
  }

  /** The representative of one. */
  public long one() {
    return one;
  }

  @Override
  public long represent(BigInteger value) {
    return represent(
        value.bitLength() < 64
            ? value.longValue()
            : value.mod(BigInteger.valueOf(modulus)).longValue());
  }

  /** The representative of a number. */
  public long represent(long value) {
    long residue = value % modulus;
    return times(residue < 0 ? residue + modulus : residue, square);
  }

  @Override
  public long residue(long representative) {
    return reduce(0, representative);
  }

  /** The sum. */
  public long plus(long left, long right) {
    long sum = left + right - modulus;
    return sum + (modulus & (sum >> 63));
  }

  /** The difference. */
  public long minus(long left, long right) {
    long difference = left - right;
    return difference + (modulus & (difference >> 63));
  }

  @Override
  public long negate(long value) {
    return value == 0 ? 0 : modulus - value;
  }

  @Override
  public long times(long left, long right) {
    return reduce(Math.multiplyHigh(left, right), left * right);
  }

  @Override
  public long convolution(long[] a, int from, long[] b, int to, int length) {
    long high = 0;
    long low = 0;
    for (int done = 0; done < length; ) {
      int stop = Math.min(length, done + CHUNK);
      for (; done < stop; done++) {
        long left = a[from + done];
        long right = b[to - done];
        long product = left * right;
        low += product;
        high += Math.multiplyHigh(left, right);
        // A carry left the low word exactly if the sum is smaller than what was added.
        high += Long.compareUnsigned(low, product) < 0 ? 1 : 0;
      }
      high = bringDown(high);
    }
    return reduce(high, low);
  }

  /** The power with a non-negative exponent. */
  public long power(long base, long exponent) {
    long result = one;
    long factor = base;
    for (long left = exponent; left > 0; left >>= 1) {
      if ((left & 1) == 1) {
        result = times(result, factor);
      }
      factor = times(factor, factor);
    }
    return result;
  }

  /**
   * One over a number.
   *
   * @throws ArithmeticException if it has a common divisor with the modulus
   */
  public long inverse(long value) {
    long a = residue(value);
    long b = modulus;
    long x = 1;
    long y = 0;
    while (b != 0) {
      long quotient = a / b;
      long next = a - quotient * b;
      a = b;
      b = next;
      long step = x - quotient * y;
      x = y;
      y = step;
    }
    if (a != 1) {
      throw new ArithmeticException(residue(value) + " is not invertible modulo " + modulus);
    }
    return represent(x);
  }

  /** Whether one over the number exists. */
  public boolean isInvertible(long value) {
    long a = residue(value);
    long b = modulus;
    while (b != 0) {
      long next = a % b;
      a = b;
      b = next;
    }
    return a == 1;
  }

  private long bringDown(long high) {
    long less = high - (modulus << 1);
    long kept = less + ((modulus << 1) & (less >> 63));
    long last = kept - modulus;
    return last + (modulus & (last >> 63));
  }

  /** (high·2⁶⁴ + low)/2⁶⁴ modulo m, for a high word under m. */
  private long reduce(long high, long low) {
    long factor = low * negatedInverse;
    // multiplyHigh is signed; a factor with its top bit set is 2⁶⁴ short.
    long carried = Math.multiplyHigh(factor, modulus) + (modulus & (factor >> 63));
    long sum = high + carried + (low == 0 ? 0 : 1) - modulus;
    return sum + (modulus & (sum >> 63));
  }
}
