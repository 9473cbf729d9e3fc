package rootwright.algebra.symmetric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;

class DiscriminantTest {

  private static Rational fromRoots(Rational lead, List<Rational> roots) {
    Rational product = lead.power(2 * roots.size() - 2);
    for (int i = 0; i < roots.size(); i++) {
      for (int j = i + 1; j < roots.size(); j++) {
        product = product.times(roots.get(i).minus(roots.get(j)).power(2));
      }
    }
    return product;
  }

  @Test
  void theDiscriminantIsTheProductOfSquaredDifferencesTimesAPowerOfTheLead() {
    Rational lead = Rational.of(-3, 2);
    for (int n = 1; n <= 4; n++) {
      for (List<Rational> roots : Samples.multisets(n)) {
        assertThat(Discriminant.of(Polynomial.withRoots(roots).times(lead)))
            .as("roots %s", roots)
            .isEqualTo(fromRoots(lead, roots));
      }
    }
    SplittableRandom random = Samples.random();
    for (int n = 5; n <= 9; n++) {
      List<Rational> roots = Samples.point(random, n);
      assertThat(Discriminant.of(Polynomial.withRoots(roots).times(lead)))
          .as("seed %d, roots %s", Samples.SEED, roots)
          .isEqualTo(fromRoots(lead, roots));
    }
  }

  @Test
  void theUniversalFormAtAMonicPolynomialIsItsDiscriminant() {
    SplittableRandom random = Samples.random();
    for (int n = 1; n <= 7; n++) {
      ElementaryForm universal = Discriminant.universal(n);
      for (int trial = 0; trial < 5; trial++) {
        List<Rational> ascending = new ArrayList<>(Samples.point(random, n));
        ascending.add(Rational.ONE);
        Polynomial polynomial = Polynomial.ofAscending(ascending);
        assertThat(universal.at(polynomial))
            .as("seed %d, %s", Samples.SEED, polynomial)
            .isEqualTo(Discriminant.of(polynomial));
      }
    }
  }

  @Test
  void theUniversalFormIsTheReductionOfTheProductWrittenOut() {
    for (int n = 2; n <= 4; n++) {
      MultivariatePolynomial product = MultivariatePolynomial.ONE;
      for (int i = 0; i < n; i++) {
        for (int j = i + 1; j < n; j++) {
          product =
              product.times(
                  MultivariatePolynomial.unknown(i)
                      .minus(MultivariatePolynomial.unknown(j))
                      .power(2));
        }
      }
      SymmetricRecognition found = SymmetricPolynomial.recognise(product, n);
      assertThat(found).isInstanceOf(SymmetricRecognition.Symmetric.class);
      assertThat(((SymmetricRecognition.Symmetric) found).polynomial().toElementary())
          .isEqualTo(Discriminant.universal(n));
    }
  }

  /** OEIS A007878, number of terms in the discriminant of the generic polynomial; from memory. */
  @Test
  void universalDiscriminantsHaveAsManyTermsAsPublished() {
    assertThat(IntStream.rangeClosed(2, 7).map(n -> Discriminant.universal(n).size()))
        .containsExactly(2, 5, 16, 59, 246, 1103);
  }

  /**
   * Dickson, First Course in the Theory of Equations, 1922: sec 45 ex 2 and 4 (p 48), sec 50 ex 1
   * (p 52), and the formula of sec 115 ex 5 (p 153) worked on an instance.
   */
  @ParameterizedTest
  @CsvSource({"1 0 -15 4, 13068", "1 4 -11 6, 0", "1 -3 1 3 -2, 0", "-4 3 7 -2, 7441"})
  void publishedDiscriminantsAreReproduced(String coefficients, String printed) {
    long[] descending = Arrays.stream(coefficients.split(" ")).mapToLong(Long::parseLong).toArray();
    assertThat(Discriminant.of(Polynomial.ofDescending(descending)))
        .isEqualTo(Rational.parse(printed));
  }

  /**
   * Hardy, A Course of Pure Mathematics, 1921, Examples XLI ex 8 (p 208): a·x³ + 3b·x² + 3c·x + d
   * has a double root when G² + 4H³ = 0, H = ac − b², G = a²d − 3abc + 2b³; a²·D = −27(G² + 4H³).
   */
  @Test
  void hardysConditionForADoubleRootIsTheDiscriminantOfTheCubic() {
    for (long b = -3; b <= 3; b++) {
      for (long c = -3; c <= 3; c++) {
        for (long d = -3; d <= 3; d++) {
          long h = 2 * c - b * b;
          long g = 4 * d - 6 * b * c + 2 * b * b * b;
          assertThat(Discriminant.of(Polynomial.ofDescending(2, 3 * b, 3 * c, d)).times(4))
              .isEqualTo(Rational.of(-27 * (g * g + 4 * h * h * h)));
        }
      }
    }
    assertThat(Discriminant.of(Polynomial.ofDescending(2, -9, 15, 7)).times(4))
        .isEqualTo(Rational.of(-110700));
  }

  @Test
  void constantsHaveNoDiscriminantAndLinearPolynomialsHaveOne() {
    assertThatThrownBy(() -> Discriminant.of(Polynomial.constant(Rational.of(7))))
        .hasMessageContaining("7");
    assertThat(Discriminant.of(Polynomial.ofDescending(5, 2))).isEqualTo(Rational.ONE);
    assertThatThrownBy(() -> Discriminant.universal(9)).hasMessageContaining("9");
  }
}
