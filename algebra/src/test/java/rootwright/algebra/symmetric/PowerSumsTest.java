package rootwright.algebra.symmetric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;

class PowerSumsTest {

  @Test
  void girardWaringAgreesWithNewtonsIdentitiesAndWithTheRoots() {
    SplittableRandom random = Samples.random();
    for (int n = 1; n <= 8; n++) {
      List<Rational> roots = Samples.point(random, n);
      List<Rational> elementaries = ElementaryValues.of(Polynomial.withRoots(roots));
      List<Rational> sums = NewtonIdentities.powerSums(elementaries, 16);
      for (int k = 0; k <= 16; k++) {
        int power = k;
        Rational direct =
            roots.stream().map(root -> root.power(power)).reduce(Rational.ZERO, Rational::plus);
        assertThat(sums.get(k)).as("seed %d: p_%d of %s", Samples.SEED, k, roots).isEqualTo(direct);
        assertThat(Partition.count(k, n)).isEqualTo(GirardWaring.powerSum(k, n).size());
        assertThat(GirardWaring.powerSum(k, n).at(elementaries.subList(1, n + 1)))
            .as("seed %d: p_%d of %s", Samples.SEED, k, roots)
            .isEqualTo(direct);
      }
    }
  }

  /** The coefficients of p_70 do not fit into words. */
  @Test
  void powerSumsFarOutAreExact() {
    List<Rational> roots = List.of(Rational.of(2), Rational.of(-3), Rational.of(1, 2));
    Rational direct =
        roots.stream().map(root -> root.power(70)).reduce(Rational.ZERO, Rational::plus);
    assertThat(GirardWaring.powerSum(70, 3).at(Polynomial.withRoots(roots))).isEqualTo(direct);
    assertThat(SymmetricPolynomial.powerSum(3, 70).toElementary())
        .isEqualTo(GirardWaring.powerSum(70, 3));
  }

  @Test
  void theClosedFormEqualsTheReductionLoop() {
    for (int n = 1; n <= 5; n++) {
      for (int k = 1; k <= 10; k++) {
        assertThat(ClassroomReduction.of(SymmetricPolynomial.powerSum(n, k)).form())
            .isEqualTo(GirardWaring.powerSum(k, n));
      }
    }
  }

  /**
   * The stored copy of OEIS A210258 prints 8; the eighth powers of the roots of x⁴ + 1 add to 4.
   */
  @Test
  void theSquareOfTheFourthElementaryPolynomialCountsFourTimesInTheEighthPowerSum() {
    ElementaryForm eighth = GirardWaring.powerSum(8, 8);
    assertThat(eighth.polynomial().coefficient(Monomial.of(0, 0, 0, 2))).isEqualTo(Rational.of(4));
    assertThat(GirardWaring.powerSum(8, 4).at(Polynomial.ofDescending(1, 0, 0, 0, 1)))
        .isEqualTo(Rational.of(4));
  }

  @Test
  void elementaryPolynomialsComeBackFromPowerSums() {
    for (int n = 1; n <= 4; n++) {
      for (List<Rational> roots : Samples.multisets(n)) {
        List<Rational> elementaries = ElementaryValues.of(Polynomial.withRoots(roots));
        assertThat(NewtonIdentities.elementaries(NewtonIdentities.powerSums(elementaries, n)))
            .isEqualTo(elementaries);
      }
    }
  }

  @Test
  void anIdentityIsWrittenAsInTheBooks() {
    assertThat(NewtonIdentity.forPowerSum(3, 4).terms())
        .containsExactly(
            new NewtonIdentity.Term(1, 1, 2),
            new NewtonIdentity.Term(-1, 2, 1),
            new NewtonIdentity.Term(3, 3, 0));
    assertThat(NewtonIdentity.forPowerSum(5, 3).terms())
        .containsExactly(
            new NewtonIdentity.Term(1, 1, 4),
            new NewtonIdentity.Term(-1, 2, 3),
            new NewtonIdentity.Term(1, 3, 2));
    assertThat(NewtonIdentity.forElementary(3).terms())
        .containsExactly(
            new NewtonIdentity.Term(1, 2, 1),
            new NewtonIdentity.Term(-1, 1, 2),
            new NewtonIdentity.Term(1, 0, 3));
  }

  @Test
  void powerSumFormsKeepTheirValue() {
    SplittableRandom random = Samples.random();
    for (int trial = 0; trial < 60; trial++) {
      int n = 1 + trial % 4;
      SymmetricPolynomial polynomial = Samples.polynomial(random, n, 7);
      List<Rational> roots = Samples.point(random, n);
      List<Rational> sums =
          NewtonIdentities.powerSums(ElementaryValues.of(Polynomial.withRoots(roots)), 7);
      assertThat(polynomial.toPowerSums().at(sums.subList(1, 8)))
          .as("seed %d, trial %d", Samples.SEED, trial)
          .isEqualTo(polynomial.at(roots));
      assertThat(polynomial.toPowerSums().toSymmetric()).isEqualTo(polynomial);
    }
  }

  @Test
  void theElementaryFormUsesOnlyTheFirstPowerSums() {
    PowerSumForm fifth = GirardWaring.powerSum(5, 3).toPowerSums();
    assertThat(fifth.polynomial().unknowns()).isEqualTo(3);
    assertThat(fifth.toElementary()).isEqualTo(GirardWaring.powerSum(5, 3));
  }

  @Test
  void completePolynomialsAndElementaryOnesAreMutual() {
    for (int n = 1; n <= 4; n++) {
      for (int k = 1; k <= 6; k++) {
        CompleteForm complete = new CompleteForm(n, MultivariatePolynomial.unknown(k - 1));
        assertThat(complete.toSymmetric()).isEqualTo(SymmetricPolynomial.complete(n, k));
        ElementaryForm elementary = complete.toElementary();
        assertThat(CompleteForm.of(elementary).toElementary()).isEqualTo(elementary);
      }
    }
  }

  @Test
  void listsThatAreNotValuesOfSuchPolynomialsAreRefused() {
    assertThatThrownBy(() -> NewtonIdentities.powerSums(List.of(Rational.TWO, Rational.ONE), 3))
        .hasMessageContaining("e_0 = 1");
    assertThatThrownBy(() -> NewtonIdentities.elementaries(List.of(Rational.TWO, Rational.ONE)))
        .hasMessageContaining("p_0 = n");
    assertThatThrownBy(() -> NewtonIdentity.forPowerSum(0, 3)).hasMessageContaining("p_0");
  }
}
