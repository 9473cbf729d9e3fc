package rootwright.algebra.symmetric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.symmetric.SymmetricRecognition.NotSymmetric;
import rootwright.algebra.symmetric.SymmetricRecognition.Symmetric;

class SymmetricPolynomialTest {

  @Test
  void orbitProductsEqualTheProductsWrittenOut() {
    for (int n = 1; n <= 4; n++) {
      int variables = n;
      Samples.partitions(4, n)
          .forEach(
              left ->
                  Samples.partitions(4, variables)
                      .forEach(
                          right -> {
                            SymmetricPolynomial a = SymmetricPolynomial.monomial(variables, left);
                            SymmetricPolynomial b = SymmetricPolynomial.monomial(variables, right);
                            assertThat(a.times(b).expand())
                                .as("%s times %s", a, b)
                                .isEqualTo(a.expand().times(b.expand()));
                          }));
    }
  }

  /** Not 1 and 1, as Pieri's rule for Schur functions would say. */
  @Test
  void theSquareOfTheSumCountsCrossTermsTwice() {
    SymmetricPolynomial sum = SymmetricPolynomial.elementary(3, 1);
    assertThat(sum.power(2))
        .isEqualTo(
            SymmetricPolynomial.powerSum(3, 2)
                .plus(SymmetricPolynomial.elementary(3, 2).times(Rational.TWO)));
  }

  @Test
  void completePolynomialsHoldEveryMonomialOnce() {
    MultivariatePolynomial expansion = SymmetricPolynomial.complete(4, 5).expand();
    assertThat(expansion.terms()).hasSize(56);
    assertThat(expansion.terms().values()).containsOnly(Rational.ONE);
  }

  @Test
  void readingTheExpansionGivesThePolynomialBack() {
    SplittableRandom random = Samples.random();
    for (int trial = 0; trial < 200; trial++) {
      SymmetricPolynomial polynomial = Samples.polynomial(random, 1 + trial % 5, 6);
      assertThat(SymmetricPolynomial.recognise(polynomial.expand(), polynomial.variables()))
          .as("seed %d, trial %d", Samples.SEED, trial)
          .isEqualTo(new Symmetric(polynomial));
    }
  }

  @Test
  void anyDisturbedTermIsFoundWithAnExchangeThatShowsIt() {
    SplittableRandom random = Samples.random();
    for (int trial = 0; trial < 200; trial++) {
      int n = 2 + trial % 4;
      MultivariatePolynomial symmetric = Samples.polynomial(random, n, 6).expand();
      Monomial disturbed = Monomial.power(random.nextInt(n), random.nextInt(1, 4));
      MultivariatePolynomial expression =
          symmetric.plus(MultivariatePolynomial.term(Rational.of(1, 7), disturbed));
      SymmetricRecognition found = SymmetricPolynomial.recognise(expression, n);
      assertThat(found)
          .as("seed %d, trial %d", Samples.SEED, trial)
          .isInstanceOf(NotSymmetric.class);
      NotSymmetric witness = (NotSymmetric) found;
      int[] exchange = new int[n];
      for (int k = 0; k < n; k++) {
        exchange[k] =
            k == witness.first() ? witness.second() : k == witness.second() ? witness.first() : k;
      }
      assertThat(MultivariatePolynomial.term(Rational.ONE, witness.term()).rename(exchange))
          .isEqualTo(MultivariatePolynomial.term(Rational.ONE, witness.image()));
      assertThat(expression.coefficient(witness.term())).isEqualTo(witness.coefficient());
      assertThat(expression.coefficient(witness.image())).isEqualTo(witness.imageCoefficient());
      assertThat(witness.coefficient()).isNotEqualTo(witness.imageCoefficient());
    }
  }

  /** r²s + s²t + t²r keeps its value when r → s → t → r, but not when two are exchanged. */
  @Test
  void aCyclicSumIsNotSymmetric() {
    MultivariatePolynomial cyclic =
        MultivariatePolynomial.term(Rational.ONE, Monomial.of(2, 1, 0))
            .plus(MultivariatePolynomial.term(Rational.ONE, Monomial.of(0, 2, 1)))
            .plus(MultivariatePolynomial.term(Rational.ONE, Monomial.of(1, 0, 2)));
    assertThat(SymmetricPolynomial.recognise(cyclic, 3)).isInstanceOf(NotSymmetric.class);
  }

  @Test
  void whatIsSymmetricInTwoVariablesIsNotInThree() {
    MultivariatePolynomial product = Samples.elementary(2, 2);
    assertThat(SymmetricPolynomial.recognise(product, 2)).isInstanceOf(Symmetric.class);
    assertThat(SymmetricPolynomial.recognise(product, 3)).isInstanceOf(NotSymmetric.class);
    assertThatThrownBy(() -> SymmetricPolynomial.recognise(product, 1))
        .hasMessageContaining("unknown number 1");
  }

  @Test
  void partitionsThatNeedMoreVariablesAreRefused() {
    assertThatThrownBy(() -> SymmetricPolynomial.monomial(2, Partition.column(3)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("1.1.1");
    assertThat(SymmetricPolynomial.elementary(2, 3).isZero()).isTrue();
  }
}
