package rootwright.algebra.local;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

class LocalRootsTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20240614L);
  private static final BigInteger ABOVE = BigInteger.TEN.pow(60);

  private static Polynomial random(SplittableRandom random, int degree) {
    List<Rational> ascending = new ArrayList<>();
    for (int k = 0; k < degree; k++) {
      ascending.add(Rational.of(random.nextInt(-9, 10)));
    }
    ascending.add(Rational.of(random.nextInt(1, 5)));
    return Polynomial.ofAscending(ascending);
  }

  /** The product a·∏ (x − r) has the coefficients of the polynomial modulo the power of p. */
  private static void assertMultipliesOut(Polynomial polynomial, String context) {
    Polynomial primitive = polynomial.primitive();
    LocalRoots local = LocalRoots.of(polynomial, ABOVE);
    LocalRing ring = local.ring();
    assertThat(ring.modulus()).isGreaterThan(ABOVE);
    List<BigInteger[]> product = new ArrayList<>();
    product.add(ring.constant(primitive.numerator(primitive.degree())));
    for (BigInteger[] root : local.roots()) {
      product.add(0, ring.constant(BigInteger.ZERO));
      for (int k = 0; k + 1 < product.size(); k++) {
        product.set(k, ring.minus(product.get(k), ring.times(product.get(k + 1), root)));
      }
    }
    assertThat(product).as(context).hasSize(primitive.degree() + 1);
    for (int k = 0; k < product.size(); k++) {
      assertThat(product.get(k))
          .as("%s, coefficient %d", context, k)
          .isEqualTo(ring.constant(primitive.numerator(k)));
    }
  }

  @Test
  void rootsMultiplyOutToThePolynomial() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 60; round++) {
      Polynomial polynomial = random(random, random.nextInt(1, 11));
      assertMultipliesOut(polynomial, "seed " + SEED + ": " + polynomial);
    }
  }

  @Test
  void repeatedRootsOccurAsOftenAsInThePolynomial() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 30; round++) {
      Polynomial polynomial =
          random(random, random.nextInt(1, 4))
              .power(random.nextInt(1, 4))
              .times(random(random, random.nextInt(1, 3)).power(2))
              .times(random(random, 2));
      assertMultipliesOut(polynomial, "seed " + SEED + ": " + polynomial);
    }
  }

  /** The polynomial of √2 + √3 + √5 factors into quadratics or less modulo every prime. */
  @Test
  void polynomialsThatFactorModuloEveryPrimeSplitInASmallExtension() {
    Polynomial polynomial = Polynomial.ofDescending(1, 0, -40, 0, 352, 0, -960, 0, 576);
    assertThat(LocalRoots.of(polynomial, ABOVE).ring().degree()).isLessThanOrEqualTo(2);
    assertMultipliesOut(polynomial, "sum of three square roots");
  }

  @Test
  void constantsHaveNoRoots() {
    assertThatThrownBy(() -> LocalRoots.of(Polynomial.ONE, ABOVE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("constant");
  }
}
