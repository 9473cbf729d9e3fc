package rootwright.algebra.modular;

import java.math.BigInteger;

/**
 * Arithmetic modulo any number m from 2 to 2³¹ − 1; a residue represents itself. Sums of products
 * are reduced as rarely as they fit in a word, by Barrett's method: the quotient is guessed from a
 * product with the reciprocal (Barrett, CRYPTO '86, 311–323, from memory).
 */
public final class SmallModulus implements WordModulus {

  /** Moduli must stay under this power of two. */
  public static final int BITS = 31;

  private final long modulus;
  private final long reciprocal;
  private final int shift;
  private final int chunk;

  private SmallModulus(long modulus) {
    this.modulus = modulus;
    int bits = 64 - Long.numberOfLeadingZeros(modulus);
    shift = bits - 2;
    // ⌊(2^(62 + bits) − 1)/m⌋ is under 2⁶³ because m ≥ 2^(bits − 1).
    reciprocal =
        BigInteger.ONE
            .shiftLeft(62 + bits)
            .subtract(BigInteger.ONE)
            .divide(BigInteger.valueOf(modulus))
            .longValueExact();
    long square = (modulus - 1) * (modulus - 1);
    chunk = (int) Math.min(1 << 20, (Long.MAX_VALUE - modulus) / square);
  }

  /**
   * Arithmetic modulo this number.
   *
   * @throws IllegalArgumentException if the modulus is not from 2 to 2³¹ − 1
   */
  public static SmallModulus of(long modulus) {
    if (modulus < 2 || modulus >>> BITS != 0) {
      throw new IllegalArgumentException("not a modulus from 2 to 2^31 - 1: " + modulus);
    }
    return new SmallModulus(modulus);
  }

  @Override
  public long modulus() {
    return modulus;
  }

  @Override
  public long represent(BigInteger value) {
    return value.bitLength() < 64
        ? Math.floorMod(value.longValue(), modulus)
        : value.mod(BigInteger.valueOf(modulus)).longValue();
  }

  @Override
  public long residue(long representative) {
    return representative;
  }

  @Override
  public long times(long left, long right) {
    return reduce(left * right);
  }

  @Override
  public long negate(long value) {
    return value == 0 ? 0 : modulus - value;
  }

  @Override
  public long convolution(long[] a, int from, long[] b, int to, int length) {
    long sum = 0;
    for (int done = 0; done < length; ) {
      int stop = length - done > chunk ? done + chunk : length;
      for (; done < stop; done++) {
        sum += a[from + done] * b[to - done];
      }
      sum = reduce(sum);
    }
    return sum;
  }

  /** The residue of a non-negative word. The guess is at most two short. */
  private long reduce(long value) {
    long rest = value - (Math.multiplyHigh(value, reciprocal) >> shift) * modulus - modulus;
    rest += modulus & (rest >> 63);
    rest -= modulus;
    return rest + (modulus & (rest >> 63));
  }
}
