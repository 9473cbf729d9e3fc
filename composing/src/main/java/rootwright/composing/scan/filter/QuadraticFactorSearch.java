package rootwright.composing.scan.filter;

import java.util.Arrays;

/**
 * Whether a polynomial with small integer coefficients and no rational root has a factor of degree
 * 2, exactly and in 64 bits. In degrees 4 and 5 that settles irreducibility.
 *
 * <p>By Gauss's lemma a factor over Q gives q₂x² + q₁x + q₀ over Z that divides P over Z. Then q₂
 * divides a_n, q₀ divides a₀, q₂ + q₁ + q₀ divides P(1) and q₂ − q₁ + q₀ divides P(−1), none of
 * which is zero; so few triples are left to divide by. (L. Kronecker 1882, with the points 0, 1, −1
 * and ∞.)
 */
final class QuadraticFactorSearch {

  /** Sizes up to this make every number below fit, and the divisors short work. */
  private static final long LARGEST = 1 << 20;

  private static final int HIGHEST_DEGREE = 8;

  private QuadraticFactorSearch() {}

  /** Whether the search is exact for this polynomial. */
  static boolean suits(long[] ascending) {
    if (ascending.length - 1 > HIGHEST_DEGREE) {
      return false;
    }
    for (long coefficient : ascending) {
      if (Math.abs(coefficient) > LARGEST) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether there is a factor of degree 2.
   *
   * @param ascending a polynomial of degree above 2 that {@linkplain #suits suits} and has no
   *     rational root
   */
  static boolean hasFactor(long[] ascending) {
    int degree = ascending.length - 1;
    long atOne = 0;
    long atMinusOne = 0;
    for (int k = degree; k >= 0; k--) {
      atOne += ascending[k];
      atMinusOne = ascending[k] - atMinusOne;
    }
    long[] leads = divisors(ascending[degree]);
    long[] constants = divisors(ascending[0]);
    long[] values = divisors(atOne);
    long[] rest = new long[degree + 1];
    for (long lead : leads) {
      for (long constant : constants) {
        for (long value : values) {
          // Both signs of the constant term and of the value at 1; the lead may be taken positive.
          if (divides(ascending, lead, value - lead - constant, constant, atMinusOne, rest)
              || divides(ascending, lead, -value - lead - constant, constant, atMinusOne, rest)
              || divides(ascending, lead, value - lead + constant, -constant, atMinusOne, rest)
              || divides(ascending, lead, -value - lead + constant, -constant, atMinusOne, rest)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static boolean divides(
      long[] ascending, long lead, long middle, long constant, long atMinusOne, long[] rest) {
    long value = lead - middle + constant;
    if (value == 0 || atMinusOne % value != 0) {
      return false;
    }
    System.arraycopy(ascending, 0, rest, 0, ascending.length);
    for (int k = ascending.length - 1; k >= 2; k--) {
      if (rest[k] % lead != 0) {
        return false;
      }
      long quotient = rest[k] / lead;
      // A factor has coefficients of at most 2^n·sqrt(n + 1)·max|a_k| (Mignotte 1974), below 2^30.
      if (Math.abs(quotient) > 1L << 30) {
        return false;
      }
      rest[k - 1] -= quotient * middle;
      rest[k - 2] -= quotient * constant;
    }
    return rest[1] == 0 && rest[0] == 0;
  }

  /** The positive divisors. */
  private static long[] divisors(long number) {
    long size = Math.abs(number);
    long[] found = new long[16];
    int count = 0;
    for (long divisor = 1; divisor * divisor <= size; divisor++) {
      if (size % divisor == 0) {
        if (count + 2 > found.length) {
          found = Arrays.copyOf(found, 2 * found.length);
        }
        found[count++] = divisor;
        if (divisor * divisor != size) {
          found[count++] = size / divisor;
        }
      }
    }
    return Arrays.copyOf(found, count);
  }
}
