package rootwright.algebra.factor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

class FactorisationTest {

  private static final long SEED = Long.getLong("rootwright.seed", 11L);

  /**
   * Cyclotomic polynomials Φ_1 … Φ_20, highest coefficient first, recomputed from the definition.
   */
  private static final String[] CYCLOTOMIC = {
    "1 -1",
    "1 1",
    "1 1 1",
    "1 0 1",
    "1 1 1 1 1",
    "1 -1 1",
    "1 1 1 1 1 1 1",
    "1 0 0 0 1",
    "1 0 0 1 0 0 1",
    "1 -1 1 -1 1",
    "1 1 1 1 1 1 1 1 1 1 1",
    "1 0 -1 0 1",
    "1 1 1 1 1 1 1 1 1 1 1 1 1",
    "1 -1 1 -1 1 -1 1",
    "1 -1 0 1 -1 1 0 -1 1",
    "1 0 0 0 0 0 0 0 1",
    "1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1",
    "1 0 0 -1 0 0 1",
    "1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1",
    "1 0 -1 0 1 0 -1 0 1"
  };

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  void theFactorsOfXToTheNMinusOneAreTheCyclotomicPolynomialsOfItsDivisors(int n) {
    List<Polynomial> expected = new ArrayList<>();
    for (int d = 1; d <= n; d++) {
      if (n % d == 0) {
        expected.add(polynomial(CYCLOTOMIC[d - 1]));
      }
    }
    Factorisation found =
        Factorisation.of(Polynomial.monomial(Rational.ONE, n).minus(Polynomial.ONE));
    assertThat(found.factors())
        .extracting(IrreducibleFactor::polynomial)
        .containsExactlyInAnyOrderElementsOf(expected);
    assertThat(found.factors()).allMatch(factor -> factor.multiplicity() == 1);
    assertThat(found.content()).isEqualTo(Rational.ONE);
  }

  @Test
  void cyclotomicPolynomialsAgreeWithTheTable() {
    for (int m = 1; m <= 20; m++) {
      assertThat(CyclotomicFactors.cyclotomic(m)).isEqualTo(polynomial(CYCLOTOMIC[m - 1]));
    }
    // Φ_105 is the first with a coefficient other than −1, 0, 1 (Migotti 1883, from memory).
    Polynomial first = CyclotomicFactors.cyclotomic(105);
    assertThat(first.degree()).isEqualTo(48);
    assertThat(first.coefficient(7)).isEqualTo(Rational.of(-2));
  }

  /**
   * Lehmer's polynomial (1933) is irreducible and not cyclotomic, though all but two of its roots
   * lie on the unit circle.
   */
  @Test
  void cyclotomicFactorsAreTakenOutOfOthers() {
    Polynomial lehmer = Polynomial.ofDescending(1, 1, 0, -1, -1, -1, -1, -1, 0, 1, 1);
    Polynomial product = lehmer.times(polynomial(CYCLOTOMIC[14])).times(polynomial(CYCLOTOMIC[6]));
    assertThat(Factorisation.of(product).factors())
        .extracting(IrreducibleFactor::polynomial)
        .containsExactlyInAnyOrder(lehmer, polynomial(CYCLOTOMIC[14]), polynomial(CYCLOTOMIC[6]));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # Swinnerton-Dyer polynomials: irreducible, yet split modulo every prime
          1 0 -10 0 1                       | 1 0 -10 0 1
          1 0 -40 0 352 0 -960 0 576        | 1 0 -40 0 352 0 -960 0 576
          # Eisenstein's criterion with 2 and with 3
          1 0 0 0 0 -2                      | 1 0 0 0 0 -2
          2 0 0 6 -3                        | 2 0 0 6 -3
          # Sophie Germain: x^4 + 4
          1 0 0 0 4                         | 1 -2 2, 1 2 2
          # irreducible modulo 5, being x^p - x - a (Artin and Schreier)
          1 0 0 0 -1 -7                     | 1 0 0 0 -1 -7
          # Dickson, First Course, 1922, sec 48 ex 3 and ex 4, p 51
          1 0 -3 6 -2                       | 1 -2 2, 1 2 -1
          1 0 -2 -8 -3                      | 1 -2 -1, 1 2 3
          # Dickson sec 114 ex 4, p 152
          1 0 3 32 67 32 65                 | 1 0 1, 1 -4 13, 1 4 5
          # DLMF 1.11(iii) (from memory)
          1 -4 0 5 2                        | 1 -3 -2, 1 -1 -1
          """)
  void factorsAgreeWithPublishedOnes(String coefficients, String expected) {
    assertThat(Factorisation.of(polynomial(coefficients)).factors())
        .extracting(IrreducibleFactor::polynomial)
        .containsExactlyInAnyOrderElementsOf(
            Arrays.stream(expected.split(",")).map(FactorisationTest::polynomial).toList());
  }

  @Test
  void repeatedFactorsCarryTheirMultiplicity() {
    // Hardy, A Course of Pure Mathematics, 1921, Examples XLI ex 4, p 208
    Polynomial quintic = Polynomial.ofDescending(1, 0, 0, 0, -1, -7);
    Polynomial polynomial =
        Polynomial.ofDescending(1, -1).power(3).times(quintic.power(2)).times(Rational.of(-3, 7));
    assertThat(Factorisation.of(polynomial))
        .isEqualTo(
            new Factorisation(
                Rational.of(-3, 7),
                List.of(
                    new IrreducibleFactor(Polynomial.ofDescending(1, -1), 3),
                    new IrreducibleFactor(quintic, 2))));
  }

  /** Eisenstein polynomials are irreducible, so their products have exactly them as factors. */
  @Test
  void productsOfEisensteinPolynomialsSplitIntoThemAgain() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 60; round++) {
      List<Polynomial> chosen = new ArrayList<>();
      Polynomial product = Polynomial.ONE;
      int count = random.nextInt(1, 4);
      for (int k = 0; k < count; k++) {
        Polynomial factor = eisenstein(random);
        chosen.add(factor);
        product = product.times(factor);
      }
      List<Polynomial> found = new ArrayList<>();
      for (IrreducibleFactor factor : Factorisation.of(product).factors()) {
        for (int k = 0; k < factor.multiplicity(); k++) {
          found.add(factor.polynomial());
        }
      }
      assertThat(found).as("seed %d", SEED).containsExactlyInAnyOrderElementsOf(chosen);
    }
  }

  private static Polynomial eisenstein(SplittableRandom random) {
    int[] primes = {2, 3, 5, 7};
    long prime = primes[random.nextInt(primes.length)];
    int degree = random.nextInt(2, 7);
    long[] descending = new long[degree + 1];
    descending[0] = 1;
    for (int k = 1; k < degree; k++) {
      descending[k] = prime * random.nextInt(-5, 6);
    }
    // Divisible by the prime once only.
    descending[degree] = prime * (prime * random.nextInt(-3, 4) + 1);
    return Polynomial.ofDescending(descending);
  }

  @Test
  void squarefreeDecompositionSortsRootsByMultiplicity() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 200; round++) {
      int[] times = new int[11];
      List<Rational> roots = new ArrayList<>();
      for (int k = random.nextInt(1, 9); k > 0; k--) {
        int root = random.nextInt(-5, 6);
        times[root + 5]++;
        roots.add(Rational.of(root));
      }
      List<SquarefreeFactor> expected = new ArrayList<>();
      for (int multiplicity = 1; multiplicity <= 9; multiplicity++) {
        List<Rational> those = new ArrayList<>();
        for (int root = -5; root <= 5; root++) {
          if (times[root + 5] == multiplicity) {
            those.add(Rational.of(root));
          }
        }
        if (!those.isEmpty()) {
          expected.add(new SquarefreeFactor(Polynomial.withRoots(those), multiplicity));
        }
      }
      assertThat(SquarefreeDecomposition.of(Polynomial.withRoots(roots).times(Rational.of(6, 5))))
          .as("seed %d", SEED)
          .isEqualTo(expected);
    }
  }

  @Test
  void aNumberHasNoFactorsAndZeroIsRefused() {
    assertThat(Factorisation.of(Polynomial.constant(Rational.of(-2, 3))))
        .isEqualTo(new Factorisation(Rational.of(-2, 3), List.of()));
    assertThatThrownBy(() -> Factorisation.of(Polynomial.ZERO))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static Polynomial polynomial(String descending) {
    return Polynomial.ofDescending(
        Arrays.stream(descending.trim().split(" ")).mapToLong(Long::parseLong).toArray());
  }
}
