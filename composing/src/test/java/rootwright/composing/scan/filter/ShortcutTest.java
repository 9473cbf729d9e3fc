package rootwright.composing.scan.filter;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.composing.scan.BruteForce;
import rootwright.composing.scan.candidate.CoefficientBox;

/** The closed forms and the modular shortcuts that the filters lean on. */
class ShortcutTest {

  private static final long SEED = Long.getLong("rootwright.seed", 5L);

  @Test
  void discriminantIsTheProductOfTheSquaredDifferences() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 500; round++) {
      int degree = 2 + random.nextInt(3);
      List<Rational> roots = new ArrayList<>();
      for (int k = 0; k < degree; k++) {
        roots.add(Rational.of(random.nextLong(-5, 6)));
      }
      long lead = random.nextLong(1, 5);
      Rational product = Rational.of(lead).power(2 * degree - 2);
      for (int i = 0; i < degree; i++) {
        for (int j = 0; j < i; j++) {
          product = product.times(roots.get(i).minus(roots.get(j)).power(2));
        }
      }
      Polynomial polynomial = Polynomial.withRoots(roots).times(Rational.of(lead));
      long[] ascending = new long[degree + 1];
      for (int k = 0; k <= degree; k++) {
        ascending[k] = polynomial.coefficient(k).intValueExact();
      }
      assertThat(Rational.of(Discriminant.of(degree).orElseThrow().at(ascending)))
          .as("seed %d: %s", SEED, polynomial)
          .isEqualTo(product);
    }
  }

  @Test
  void residuesNeverProveSomethingFalse() {
    int settled = 0;
    CoefficientBox box = CoefficientBox.upTo(4, 4);
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 3_000; round++) {
      long index = random.nextLong(box.candidates());
      long[] ascending = box.coefficientsAt(index);
      Polynomial polynomial = box.polynomialAt(index);
      ResidueTables tables = ResidueTables.of(4);
      if (tables.proveSquarefree(ascending)) {
        assertThat(BruteForce.isSquarefree(polynomial)).as("%s", polynomial).isTrue();
        settled++;
      }
      if (tables.proveNoDivisor(ascending, 1 << 1)) {
        assertThat(BruteForce.hasRationalRoot(polynomial)).as("%s", polynomial).isFalse();
      }
      if (tables.proveNoDivisor(ascending, 1 << 1 | 1 << 2)) {
        assertThat(BruteForce.isIrreducible(polynomial)).as("%s", polynomial).isTrue();
      }
    }
    assertThat(settled).isGreaterThan(2_000);
  }

  @Test
  void quarticReducibleModuloEveryPrimeIsLeftToTheExactTest() {
    // x^4 + 1 is irreducible over Q and a product modulo every prime (Hilbert's classical example).
    long[] ascending = {1, 0, 0, 0, 1};
    assertThat(ResidueTables.of(4).proveNoDivisor(ascending, 1 << 1 | 1 << 2)).isFalse();
    assertThat(new Irreducible(BruteForce.EXACT).passes(ascending)).isTrue();
    // x^4 + 4 = (x^2 + 2x + 2)(x^2 - 2x + 2), by Sophie Germain's identity.
    assertThat(new Irreducible(BruteForce.EXACT).passes(new long[] {4, 0, 0, 0, 1})).isFalse();
  }

  @Test
  void rationalRootsOfAnySizeAreFound() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 300; round++) {
      BigInteger big = BigInteger.valueOf(random.nextLong()).pow(2).add(BigInteger.ONE);
      Polynomial linear =
          Polynomial.ofAscending(
              new BigInteger[] {big, BigInteger.valueOf(random.nextLong(1, 1_000_000))},
              BigInteger.ONE);
      Polynomial product = linear.times(Polynomial.ofDescending(1, 1, 1)).times(linear);
      assertThat(RationalRootSearch.hasRoot(product)).as("seed %d", SEED).isTrue();
      assertThat(RationalRootSearch.hasRoot(Polynomial.ofDescending(1, 0, 2).times(linear)))
          .isTrue();
    }
    assertThat(RationalRootSearch.hasRoot(Polynomial.ofDescending(1, 0, -2))).isFalse();
    assertThat(RationalRootSearch.hasRoot(Polynomial.ofDescending(1, 0, 0))).isTrue();
    assertThat(RationalRootSearch.hasRoot(Polynomial.ofDescending(4, 0, -9))).isTrue();
    assertThat(RationalRootSearch.hasRoot(Polynomial.ofDescending(1, 0, 5, 0, 6))).isFalse();
  }

  @Test
  void rootsModuloAPrimeThatDoNotLiftToRationalRootsAreNotTaken() {
    // (x^2 - 2)(x^2 - 3)(x^2 - 6) has a root modulo every prime and no rational root.
    Polynomial everywhere =
        Polynomial.ofDescending(1, 0, -2)
            .times(Polynomial.ofDescending(1, 0, -3))
            .times(Polynomial.ofDescending(1, 0, -6));
    assertThat(RationalRootSearch.hasRoot(everywhere)).isFalse();
    assertThat(RationalRootSearch.hasRoot(everywhere.times(Polynomial.ofDescending(7, 3))))
        .isTrue();
  }

  @Test
  void quadraticFactorsAreFoundWheneverTheyAreThere() {
    SplittableRandom random = new SplittableRandom(SEED);
    int found = 0;
    for (int round = 0; round < 3_000; round++) {
      Polynomial product =
          random.nextBoolean()
              ? random(random, 2).times(random(random, 2 + random.nextInt(2)))
              : random(random, 4 + random.nextInt(2));
      long[] ascending = new long[product.degree() + 1];
      for (int k = 0; k < ascending.length; k++) {
        ascending[k] = product.coefficient(k).intValueExact();
      }
      if (!BruteForce.hasRationalRoot(product)) {
        boolean expected = !BruteForce.isIrreducible(product);
        assertThat(QuadraticFactorSearch.hasFactor(ascending))
            .as("seed %d: %s", SEED, product)
            .isEqualTo(expected);
        found += expected ? 1 : 0;
      }
    }
    assertThat(found).isGreaterThan(500);
  }

  private static Polynomial random(SplittableRandom random, int degree) {
    long[] descending = new long[degree + 1];
    for (int k = 1; k <= degree; k++) {
      descending[k] = random.nextLong(-9, 10);
    }
    descending[0] = random.nextLong(1, 7);
    return Polynomial.ofDescending(descending);
  }
}
