package rootwright.algebra.factor;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.polynomial.Polynomial;

class IrreducibleByPrimesTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20261125L);

  private static Polynomial polynomial(long... descending) {
    BigInteger[] ascending = new BigInteger[descending.length];
    for (int k = 0; k < descending.length; k++) {
      ascending[descending.length - 1 - k] = BigInteger.valueOf(descending[k]);
    }
    return Polynomial.ofAscending(ascending, BigInteger.ONE);
  }

  @Test
  void aQuarticWithTheFullGroupIsProvedIrreducible() {
    assertThat(IrreducibleByPrimes.proves(polynomial(1, -2, 3, -1, 5))).isTrue();
    assertThat(IrreducibleByPrimes.proves(polynomial(1, 0, 0, -1, -1))).isTrue();
  }

  @Test
  void aPolynomialThatSplitsModuloEveryPrimeIsLeftOpen() {
    // x⁴ + 1 is irreducible and splits modulo every prime: a textbook example, from memory.
    assertThat(IrreducibleByPrimes.proves(polynomial(1, 0, 0, 0, 1))).isFalse();
    assertThat(IrreducibleByPrimes.proves(polynomial(1, 0, -10, 0, 1))).isFalse();
  }

  @Test
  void noProductIsEverCalledIrreducible() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int trial = 0; trial < 2000; trial++) {
      Polynomial left = drawn(random, 1 + random.nextInt(4));
      Polynomial right = drawn(random, 1 + random.nextInt(4));
      Polynomial product = left.times(right).primitive();
      assertThat(IrreducibleByPrimes.proves(product))
          .as("(%s)(%s), seed %d", left, right, SEED)
          .isFalse();
    }
  }

  private static Polynomial drawn(SplittableRandom random, int degree) {
    long[] descending = new long[degree + 1];
    for (int k = 0; k <= degree; k++) {
      descending[k] = random.nextLong(-30, 31);
    }
    descending[0] = random.nextLong(1, 10);
    return polynomial(descending);
  }
}
