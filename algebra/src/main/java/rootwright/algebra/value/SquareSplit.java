package rootwright.algebra.value;

import java.math.BigInteger;

/**
 * A non-zero whole number n written as root²·rest, where {@code rest} has the sign of n and no
 * square of a prime up to 100 000 divides it, nor is it itself a square unless it is 1. Below 10^15
 * in absolute value the rest is therefore squarefree; beyond, nobody is made to wait for the prime
 * factors of a huge number.
 *
 * @param root positive
 * @param rest not zero
 */
record SquareSplit(BigInteger root, BigInteger rest) {

  private static final int LARGEST_TRIAL = 100_000;

  /**
   * Splits a number.
   *
   * @throws IllegalArgumentException if the number is zero
   */
  static SquareSplit of(BigInteger number) {
    if (number.signum() == 0) {
      throw new IllegalArgumentException("zero has no squarefree part");
    }
    BigInteger open = number.abs();
    BigInteger root = BigInteger.ONE;
    BigInteger rest = BigInteger.ONE;
    for (int trial = 2;
        trial <= LARGEST_TRIAL && exceedsCube(open, trial);
        trial += trial == 2 ? 1 : 2) {
      BigInteger divisor = BigInteger.valueOf(trial);
      BigInteger[] parts = open.divideAndRemainder(divisor);
      boolean odd = false;
      while (parts[1].signum() == 0) {
        open = parts[0];
        if (odd) {
          root = root.multiply(divisor);
        }
        odd = !odd;
        parts = open.divideAndRemainder(divisor);
      }
      if (odd) {
        rest = rest.multiply(divisor);
      }
    }
    // Without a prime factor up to its cube root, a number is a prime, two primes or a square.
    BigInteger[] square = open.sqrtAndRemainder();
    if (square[1].signum() == 0) {
      root = root.multiply(square[0]);
    } else {
      rest = rest.multiply(open);
    }
    return new SquareSplit(root, number.signum() < 0 ? rest.negate() : rest);
  }

  private static boolean exceedsCube(BigInteger number, long trial) {
    return number.bitLength() > 62 || number.longValue() >= trial * trial * trial;
  }
}
