package rootwright.algebra.roots;

import java.math.BigInteger;
import rootwright.algebra.modular.OddModulus;
import rootwright.algebra.polynomial.Polynomial;

/**
 * How the power sums of pairs of roots follow from the power sums s_k of the roots, modulo a prime;
 * and how large the polynomial of the pairs can be.
 */
enum PairPowerSums {
  /** Σ (r + s)^k = ½(Σ C(k, m) s_m s_(k−m) − 2^k s_k). */
  SUMS(1, 1, 1) {
    @Override
    long[] powerSums(long[] sums, long[] reversed, int size, OddModulus field) {
      long[] pairs = binomialSums(sums, size, field);
      long half = field.inverse(field.represent(2));
      long twoPower = field.one();
      for (int k = 0; k <= size; k++) {
        pairs[k] = field.times(half, field.minus(pairs[k], field.times(twoPower, sums[k])));
        twoPower = field.plus(twoPower, twoPower);
      }
      return pairs;
    }
  },
  /** Σ (r·s)^k = ½(s_k² − s_2k). */
  PRODUCTS(1, 0, 2) {
    @Override
    long[] powerSums(long[] sums, long[] reversed, int size, OddModulus field) {
      long[] pairs = new long[size + 1];
      long half = field.inverse(field.represent(2));
      for (int k = 0; k <= size; k++) {
        pairs[k] = field.times(half, field.minus(field.times(sums[k], sums[k]), sums[2 * k]));
      }
      return pairs;
    }
  },
  /** Σ (r − s)^2k = ½ Σ C(2k, m) (−1)^m s_m s_(2k−m). */
  SQUARED_DIFFERENCES(2, 2, 2) {
    @Override
    long[] powerSums(long[] sums, long[] reversed, int size, OddModulus field) {
      // (−1)^m s_m are the power sums of the −r; all (r − s)^j together give even powers twice.
      long[] scaled = dividedByFactorials(sums, 2 * size, field);
      long[] opposite = scaled.clone();
      for (int m = 1; m <= 2 * size; m += 2) {
        opposite[m] = field.negate(opposite[m]);
      }
      long half = field.inverse(field.represent(2));
      long[] pairs = new long[size + 1];
      long factorial = field.one();
      for (int k = 0; k <= size; k++) {
        if (k > 0) {
          factorial = field.times(factorial, field.represent((2L * k - 1) * (2L * k)));
        }
        long sum = field.convolution(scaled, 0, opposite, 2 * k, 2 * k + 1);
        pairs[k] = field.times(half, field.times(factorial, sum));
      }
      return pairs;
    }
  },
  /** Σ (r/s)^k = s_k s_(−k) − n. */
  RATIOS(2, 0, 1) {
    @Override
    int size(int degree) {
      return degree * (degree - 1);
    }

    @Override
    boolean isGood(Polynomial primitive, OddModulus field) {
      return super.isGood(primitive, field) && field.represent(primitive.numerator(0)) != 0;
    }

    @Override
    BigInteger scale(Polynomial primitive) {
      int degree = primitive.degree();
      return primitive.numerator(degree).multiply(primitive.numerator(0)).pow(degree - 1);
    }

    @Override
    long[] powerSums(long[] sums, long[] reversed, int size, OddModulus field) {
      long[] pairs = new long[size + 1];
      for (int k = 0; k <= size; k++) {
        pairs[k] = field.minus(field.times(sums[k], reversed[k]), sums[0]);
      }
      return pairs;
    }
  };

  /** How often a fixed root occurs in the product over the pairs, divided by n − 1. */
  private final int occurrences;

  /** Each image is at most 2^this times the product of the larger of 1 and |r| over its roots. */
  private final int doublings;

  /** The power sums of the roots that are needed: this many times the number of pairs. */
  private final int reach;

  PairPowerSums(int occurrences, int doublings, int reach) {
    this.occurrences = occurrences;
    this.doublings = doublings;
    this.reach = reach;
  }

  /** The power sums of the pairs for exponents 0 … size. */
  abstract long[] powerSums(long[] sums, long[] reversed, int size, OddModulus field);

  /** The number of pairs. */
  int size(int degree) {
    return degree * (degree - 1) / 2;
  }

  /** The number that makes the monic polynomial of the pairs whole: a^(occurrences·(n − 1)). */
  BigInteger scale(Polynomial primitive) {
    int degree = primitive.degree();
    return primitive.numerator(degree).pow(occurrences * (degree - 1));
  }

  /** No coefficient of the scaled polynomial of the pairs is larger in size. */
  BigInteger bound(Polynomial primitive) {
    int degree = primitive.degree();
    BigInteger squares = BigInteger.ZERO;
    for (int k = 0; k <= degree; k++) {
      squares = squares.add(primitive.numerator(k).pow(2));
    }
    BigInteger measure = squares.sqrt().add(BigInteger.ONE);
    int size = size(degree);
    return measure.pow(occurrences * (degree - 1)).shiftLeft(size * (1 + doublings));
  }

  /** Whether the prime divides no number that has to be divided by. */
  boolean isGood(Polynomial primitive, OddModulus field) {
    return field.represent(primitive.lead().numerator()) != 0;
  }

  /** The coefficients of the scaled polynomial of the pairs modulo the prime, constant first. */
  long[] coefficients(Polynomial primitive, int size, OddModulus field) {
    long[] sums = ModularPowerSums.upTo(reach * size, primitive, field);
    long[] reversed =
        this == RATIOS
            ? ModularPowerSums.upTo(reach * size, primitive.reversed(), field)
            : new long[0];
    long[] pairs = powerSums(sums, reversed, size, field);
    // Newton: k·c_k = −Σ p_i c_(k−i), where c_k belongs to T^(N−k).
    long[] descending = new long[size + 1];
    long[] inverses = inverses(size, field);
    descending[0] = field.represent(scale(primitive));
    long[] ascending = new long[size + 1];
    ascending[size] = descending[0];
    for (int k = 1; k <= size; k++) {
      long sum = field.convolution(pairs, 1, descending, k - 1, k);
      descending[k] = field.negate(field.times(sum, inverses[k]));
      ascending[size - k] = descending[k];
    }
    return ascending;
  }

  private static long[] binomialSums(long[] sums, int last, OddModulus field) {
    long[] scaled = dividedByFactorials(sums, last, field);
    long[] binomial = new long[last + 1];
    long factorial = field.one();
    for (int k = 0; k <= last; k++) {
      if (k > 0) {
        factorial = field.times(factorial, field.represent(k));
      }
      binomial[k] = field.times(factorial, field.convolution(scaled, 0, scaled, k, k + 1));
    }
    return binomial;
  }

  private static long[] dividedByFactorials(long[] sums, int last, OddModulus field) {
    long[] inverses = inverses(last, field);
    long[] scaled = new long[last + 1];
    long inverseFactorial = field.one();
    for (int k = 0; k <= last; k++) {
      if (k > 0) {
        inverseFactorial = field.times(inverseFactorial, inverses[k]);
      }
      scaled[k] = field.times(sums[k], inverseFactorial);
    }
    return scaled;
  }

  /** 1/k for k = 1 … last, from one inversion: 1/k! = (k + 1)·1/(k + 1)!. */
  private static long[] inverses(int last, OddModulus field) {
    long[] factorials = new long[last + 1];
    factorials[0] = field.one();
    for (int k = 1; k <= last; k++) {
      factorials[k] = field.times(factorials[k - 1], field.represent(k));
    }
    long[] inverses = new long[last + 1];
    long inverseFactorial = field.inverse(factorials[last]);
    for (int k = last; k >= 1; k--) {
      inverses[k] = field.times(inverseFactorial, factorials[k - 1]);
      inverseFactorial = field.times(inverseFactorial, field.represent(k));
    }
    return inverses;
  }
}
