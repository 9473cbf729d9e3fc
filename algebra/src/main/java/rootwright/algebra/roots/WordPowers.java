package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Optional;

/**
 * Powers of the unknown modulo a monic polynomial as long as every number fits a machine word: the
 * first squarings of a far power are of short numbers.
 */
final class WordPowers {

  /** Numbers stay below 2 to this, so that a sum of two of them is no overflow. */
  private static final int BITS = 62;

  private final long[] tail;
  private final int tailBits;

  private WordPowers(long[] tail) {
    this.tail = tail;
    this.tailBits = bits(tail);
  }

  /** Words for x^n + tail[n−1]·x^(n−1) + …, if its coefficients are short. */
  static Optional<WordPowers> modulo(BigInteger[] tail) {
    for (BigInteger coefficient : tail) {
      if (coefficient.bitLength() > BITS / 2) {
        return Optional.empty();
      }
    }
    return Optional.of(
        new WordPowers(Arrays.stream(tail).mapToLong(BigInteger::longValueExact).toArray()));
  }

  /** The square of a remainder, times the unknown if wanted; empty if a number becomes too long. */
  Optional<long[]> squared(long[] value, boolean timesUnknown) {
    int degree = tail.length;
    // A sum of n products of two numbers below 2^b is below 2^(2b + the bits of n).
    int factorBits = bits(value);
    if (2 * factorBits + Integer.SIZE - Integer.numberOfLeadingZeros(degree) > BITS) {
      return Optional.empty();
    }
    long[] product = new long[2 * degree];
    int from = timesUnknown ? 1 : 0;
    for (int i = 0; i < degree; i++) {
      for (int j = 0; j < degree; j++) {
        product[i + j + from] += value[i] * value[j];
      }
    }
    for (int k = product.length - 1; k >= degree; k--) {
      long top = product[k];
      if (top != 0) {
        if (bits(top) + tailBits >= BITS) {
          return Optional.empty();
        }
        for (int j = 0; j < degree; j++) {
          long next = product[k - degree + j] - top * tail[j];
          if (bits(next) >= BITS) {
            return Optional.empty();
          }
          product[k - degree + j] = next;
        }
      }
    }
    return Optional.of(Arrays.copyOf(product, degree));
  }

  private static int bits(long... numbers) {
    int most = 0;
    for (long number : numbers) {
      most = Math.max(most, bits(number));
    }
    return most;
  }

  private static int bits(long number) {
    return Long.SIZE - Long.numberOfLeadingZeros(Math.abs(number));
  }
}
