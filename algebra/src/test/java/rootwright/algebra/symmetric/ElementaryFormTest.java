package rootwright.algebra.symmetric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;

class ElementaryFormTest {

  @Test
  void theFormAtTheRootsOfAPolynomialEqualsThePolynomialAtTheRoots() {
    for (int n = 1; n <= 4; n++) {
      int variables = n;
      List<List<Rational>> multisets = Samples.multisets(n);
      Samples.partitions(6, n)
          .forEach(
              partition -> {
                SymmetricPolynomial monomial = SymmetricPolynomial.monomial(variables, partition);
                ElementaryForm form = monomial.toElementary();
                MultivariatePolynomial expansion = monomial.expand();
                for (List<Rational> roots : multisets) {
                  Polynomial polynomial = Polynomial.withRoots(roots).times(Rational.of(-3));
                  assertThat(form.at(polynomial))
                      .as("m(%s) at %s", partition, roots)
                      .isEqualTo(expansion.at(roots));
                }
              });
    }
  }

  @Test
  void theFormAtRandomRootsEqualsThePolynomialThere() {
    SplittableRandom random = Samples.random();
    for (int trial = 0; trial < 150; trial++) {
      int n = 1 + trial % 6;
      SymmetricPolynomial polynomial = Samples.polynomial(random, n, 9);
      List<Rational> roots = Samples.point(random, n);
      assertThat(polynomial.toElementary().at(Polynomial.withRoots(roots)))
          .as("seed %d, trial %d: %s at %s", Samples.SEED, trial, polynomial, roots)
          .isEqualTo(polynomial.at(roots));
    }
  }

  @Test
  void substitutingTheElementaryPolynomialsGivesTheExpansionBack() {
    SplittableRandom random = Samples.random();
    for (int trial = 0; trial < 60; trial++) {
      int n = 1 + trial % 4;
      SymmetricPolynomial polynomial = Samples.polynomial(random, n, 7);
      assertThat(polynomial.toElementary().polynomial().substitute(Samples.elementaries(n)))
          .as("seed %d, trial %d: %s", Samples.SEED, trial, polynomial)
          .isEqualTo(polynomial.expand());
    }
  }

  @Test
  void reducingAndMultiplyingOutAreInverse() {
    SplittableRandom random = Samples.random();
    for (int trial = 0; trial < 100; trial++) {
      SymmetricPolynomial polynomial = Samples.polynomial(random, 1 + trial % 7, 10);
      assertThat(polynomial.toElementary().toSymmetric())
          .as("seed %d, trial %d", Samples.SEED, trial)
          .isEqualTo(polynomial);
      assertThat(polynomial.toPowerSums().toElementary())
          .as("seed %d, trial %d", Samples.SEED, trial)
          .isEqualTo(polynomial.toElementary());
    }
  }

  @Test
  void wordsAndBigNumbersGiveTheSameForm() {
    SplittableRandom random = Samples.random();
    for (int trial = 0; trial < 60; trial++) {
      SymmetricPolynomial polynomial = Samples.polynomial(random, 2 + trial % 5, 10);
      // Multiplied by 2^70 no coefficient fits into a word.
      Rational wide = Rational.TWO.power(70);
      assertThat(polynomial.times(wide).toElementary().polynomial())
          .as("seed %d, trial %d", Samples.SEED, trial)
          .isEqualTo(polynomial.toElementary().polynomial().times(wide));
    }
  }

  @Test
  void coefficientsMayOutgrowAWordOnTheWay() {
    // e_4^14 of 8 variables has a coefficient near 70^13.
    ElementaryForm product = ElementaryForm.of(8, MultivariatePolynomial.unknown(3).power(14));
    SymmetricPolynomial expansion = product.toSymmetric();
    assertThat(expansion.terms().values())
        .anyMatch(coefficient -> coefficient.numerator().bitLength() > 63);
    // At (1, …, 1): C(8, 4) = 70.
    Rational sum = Rational.ZERO;
    for (var term : expansion.terms().entrySet()) {
      sum = sum.plus(term.getValue().times(Rational.of(term.getKey().orbitSize(8))));
    }
    assertThat(sum).isEqualTo(Rational.of(70).power(14));
  }

  @Test
  void aFormHasNoMoreElementaryPolynomialsThanVariables() {
    assertThatThrownBy(() -> ElementaryForm.of(2, MultivariatePolynomial.unknown(2)))
        .hasMessageContaining("e_3");
    ElementaryForm form = SymmetricPolynomial.powerSum(3, 2).toElementary();
    assertThatThrownBy(() -> form.at(Polynomial.ofDescending(1, 0, -1)))
        .hasMessageContaining("3 variables");
  }

  @Test
  void aPolynomialInManyVariablesIsReducedAsInFew() {
    // The form of m(3.2.1) does not depend on the number of variables once it is 6.
    MultivariatePolynomial six =
        SymmetricPolynomial.monomial(6, Partition.of(3, 2, 1)).toElementary().polynomial();
    assertThat(SymmetricPolynomial.monomial(30, Partition.of(3, 2, 1)).toElementary().polynomial())
        .isEqualTo(six);
    // Twenty parts of up to 9 do not fit into one word.
    assertThat(
            SymmetricPolynomial.monomial(20, Partition.column(20))
                .times(SymmetricPolynomial.monomial(20, Partition.of(8)))
                .toElementary()
                .polynomial())
        .isEqualTo(
            GirardWaring.powerSum(8, 20).polynomial().times(MultivariatePolynomial.unknown(19)));
  }

  @Test
  void elementaryValuesFollowViete() {
    assertThat(ElementaryValues.of(Polynomial.ofDescending(2, -3, 5, 7)))
        .containsExactly(Rational.ONE, Rational.of(3, 2), Rational.of(5, 2), Rational.of(-7, 2));
    assertThat(ElementaryValues.of(Polynomial.constant(Rational.of(5))))
        .containsExactly(Rational.ONE);
    assertThatThrownBy(() -> ElementaryValues.of(Polynomial.ZERO))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
