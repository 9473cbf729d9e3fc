package rootwright.algebra.modular;

import java.util.ArrayList;
import java.util.List;

/**
 * The primes under 2⁶¹, largest first, found as they are needed.
 *
 * <p>Primality is proven: Miller and Rabin's test with the first twelve primes as bases decides
 * every number under 3.18·10²³ (Sorenson and Webster, Mathematics of Computation 86 (2017)
 * 985–1003).
 */
public final class WordPrimes {

  private static final long[] BASES = {2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37};
  private static final List<OddModulus> FOUND = new ArrayList<>();

  private WordPrimes() {}

  /** Arithmetic modulo the prime with this number, 0 being the largest: 2⁶¹ − 1. */
  public static OddModulus get(int number) {
    synchronized (FOUND) {
      long candidate = FOUND.isEmpty() ? (1L << 61) - 1 : FOUND.get(FOUND.size() - 1).modulus() - 2;
      while (FOUND.size() <= number) {
        if (isPrime(candidate)) {
          FOUND.add(OddModulus.of(candidate));
        }
        candidate -= 2;
      }
      return FOUND.get(number);
    }
  }

  /** Whether an odd number from 41 to 2⁶¹ − 1 is prime. */
  static boolean isPrime(long number) {
    for (long base : BASES) {
      if (number % base == 0) {
        return false;
      }
    }
    OddModulus field = OddModulus.of(number);
    int twos = Long.numberOfTrailingZeros(number - 1);
    for (long base : BASES) {
      long value = field.power(field.represent(base), (number - 1) >> twos);
      boolean passes = value == field.one();
      for (int k = 0; k < twos && !passes; k++) {
        passes = value == field.negate(field.one());
        value = field.times(value, value);
      }
      if (!passes) {
        return false;
      }
    }
    return true;
  }
}
