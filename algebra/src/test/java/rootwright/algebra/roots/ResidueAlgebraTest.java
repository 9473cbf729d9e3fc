package rootwright.algebra.roots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

class ResidueAlgebraTest {

  /** Division with remainder; the values are standard and were worked out again by hand. */
  @ParameterizedTest
  @CsvSource({
    "1 -2 -1, 6, 70 29",
    "1 0 -1 -1, 7, 2 2 1",
    "1 0 -1 -1, 10, 4 5 3",
    "1 -3 2, 10, 1023 -1022",
    "1 0 0 -1 -1, 9, 1 2 1 0",
    "1 -1 1, 100, -1 0"
  })
  void powersOfARootReduceToLowerDegree(String polynomial, long exponent, String reduced) {
    assertThat(ResidueAlgebra.of(Coefficients.read(polynomial)).power(Polynomial.X, exponent))
        .isEqualTo(Coefficients.read(reduced));
  }

  /**
   * Sums over the roots that need only one root each, the others being written by the sum of all.
   * Dickson, First Course in the Theory of Equations (1922): sec 103 ex 5 (twice), sec 105 ex 17
   * (at −7), 5, 6, 1, 13; Hall and Knight, Higher Algebra (1887), XXXV.a 18 and 19 (numbering from
   * memory); Burnside and Panton, The Theory of Equations, chapter III (from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "1 -4 3 7 -2, 1, 1 0, 7/2",
    "1 2 -3 5 7, 1, 1 0 0, 67/49",
    "1 3 2 -5 4, 1, 1 7, 964/1509",
    "1 4 3 -7, 1, 1 0 0, 65/49",
    "1 0 2 -3, 1, -1 0, -2/3",
    "1 2 -3 5, 1, -1 -2, 1/11",
    "1 3 2 -5, 1 6 9, 1, 14",
    "1 -4 3 7, -8 48 -96 64, 1, 232",
    "1 2 -3 5, 1 0 0 -5, -1 -2 0, 111/11",
    "1 -4 3 7 -2, -1 0 10, -1 4, 455/37"
  })
  void printedSumsOverTheRootsAreTraces(String row, String over, String under, String value) {
    assertThat(
            ResidueAlgebra.of(Coefficients.read(row))
                .trace(Coefficients.read(over), Coefficients.read(under)))
        .isEqualTo(new RootValue.Exact(Rational.parse(value)));
  }

  @Test
  void traceAndNormEqualSumAndProductOverTheRoots() {
    Polynomial f = Polynomial.ofDescending(2, -1, 0, 5);
    for (ChosenRoots chosen : ChosenRoots.all(4)) {
      ResidueAlgebra algebra = ResidueAlgebra.of(chosen.polynomial());
      assertThat(algebra.trace(f)).as("%s", chosen).isEqualTo(chosen.sum(f::at));
      assertThat(algebra.norm(f)).as("%s", chosen).isEqualTo(chosen.product(f::at));
    }
  }

  @Test
  void characteristicPolynomialHasTheImagesOfTheRootsAsRoots() {
    Polynomial f = Polynomial.ofDescending(1, -3, 1);
    for (ChosenRoots chosen : ChosenRoots.all(4)) {
      List<Rational> images = chosen.roots().stream().map(f::at).toList();
      assertThat(ResidueAlgebra.of(chosen.polynomial()).characteristic(f))
          .as("%s", chosen)
          .isEqualTo(Polynomial.withRoots(images));
    }
  }

  @Test
  void quotientIsSummedOrTheRootThatSpoilsItIsNamed() {
    Polynomial over = Polynomial.ofDescending(1, 2);
    Polynomial under = Polynomial.ofDescending(1, -1, -2);
    for (ChosenRoots chosen : ChosenRoots.all(4)) {
      ResidueAlgebra algebra = ResidueAlgebra.of(chosen.polynomial());
      boolean defined = chosen.roots().stream().noneMatch(r -> under.at(r).isZero());
      RootValue sum = algebra.trace(over, under);
      RootValue product = algebra.norm(over, under);
      if (defined) {
        assertThat(sum)
            .as("%s", chosen)
            .isEqualTo(new RootValue.Exact(chosen.sum(r -> over.at(r).over(under.at(r)))));
        assertThat(product)
            .as("%s", chosen)
            .isEqualTo(new RootValue.Exact(chosen.product(r -> over.at(r).over(under.at(r)))));
      } else {
        assertThat(sum).as("%s", chosen).isInstanceOf(RootValue.ZeroDenominator.class);
        assertThat(product).as("%s", chosen).isInstanceOf(RootValue.ZeroDenominator.class);
        Polynomial culprit = ((RootValue.ZeroDenominator) sum).common();
        assertThat(culprit.degree()).isPositive();
        assertThat(under.remainder(culprit).isZero()).isTrue();
        assertThat(chosen.polynomial().remainder(culprit).isZero()).isTrue();
      }
    }
  }

  @Test
  void inverseTimesTheElementIsOne() {
    SplittableRandom random = Seed.random();
    for (int round = 0; round < 300; round++) {
      ResidueAlgebra algebra = ResidueAlgebra.of(Seed.polynomial(random, random.nextInt(1, 9)));
      Polynomial element = Seed.polynomial(random, random.nextInt(0, 10));
      String context = "seed " + Seed.VALUE + ": " + element + " modulo " + algebra.modulus();
      Inverse inverse = algebra.inverse(element);
      if (inverse instanceof Inverse.Inverted inverted) {
        assertThat(algebra.times(inverted.value(), element)).as(context).isEqualTo(Polynomial.ONE);
      } else {
        assertThat(((Inverse.SharedFactor) inverse).common())
            .as(context)
            .isEqualTo(algebra.modulus().gcd(element));
        assertThat(algebra.norm(element).isZero()).as(context).isTrue();
      }
    }
  }

  @Test
  void sumsOfQuotientsAgreeWithInverseAndTrace() {
    SplittableRandom random = Seed.random();
    for (int round = 0; round < 400; round++) {
      ResidueAlgebra algebra = ResidueAlgebra.of(Seed.polynomial(random, random.nextInt(1, 13)));
      Rational scale = Rational.of(random.nextInt(1, 9), random.nextInt(1, 9));
      Polynomial over = Seed.polynomial(random, random.nextInt(0, 15)).times(scale);
      Polynomial under = Seed.polynomial(random, random.nextInt(0, 15));
      RootValue expected =
          algebra.inverse(under) instanceof Inverse.Inverted inverted
              ? new RootValue.Exact(algebra.trace(algebra.times(over, inverted.value())))
              : new RootValue.ZeroDenominator(algebra.modulus().gcd(under));
      assertThat(algebra.trace(over, under))
          .as("seed %d: %s over %s at %s", Seed.VALUE, over, under, algebra.modulus())
          .isEqualTo(expected);
    }
  }

  /** The first primes divide the denominator at every root; they must be passed over. */
  @Test
  void primesThatDivideTheDenominatorAreLeftOut() {
    long prime = (1L << 61) - 1;
    ResidueAlgebra algebra = ResidueAlgebra.of(Polynomial.ofDescending(1, -3, 1));
    assertThat(algebra.trace(Polynomial.X, Polynomial.ofDescending(prime)))
        .isEqualTo(new RootValue.Exact(Rational.of(3, prime)));
    assertThat(algebra.trace(Polynomial.ZERO, Polynomial.ofDescending(prime)))
        .isEqualTo(new RootValue.Exact(Rational.ZERO));
  }

  @Test
  void everyElementIsARootOfItsCharacteristicPolynomial() {
    SplittableRandom random = Seed.random();
    for (int round = 0; round < 100; round++) {
      ResidueAlgebra algebra = ResidueAlgebra.of(Seed.polynomial(random, random.nextInt(1, 7)));
      Polynomial element = Seed.polynomial(random, random.nextInt(0, 7));
      Polynomial value = Polynomial.ZERO;
      Polynomial equation = algebra.characteristic(element);
      for (int k = equation.degree(); k >= 0; k--) {
        value = algebra.times(value, element).plus(Polynomial.constant(equation.coefficient(k)));
      }
      assertThat(algebra.reduce(value)).as("seed %d", Seed.VALUE).isEqualTo(Polynomial.ZERO);
    }
  }

  @Test
  void zeroHasNoInverseAndSharesTheWholePolynomial() {
    ResidueAlgebra algebra = ResidueAlgebra.of(Polynomial.ofDescending(2, 0, -4));
    assertThat(algebra.inverse(Polynomial.ZERO))
        .isEqualTo(new Inverse.SharedFactor(Polynomial.ofDescending(1, 0, -2)));
    assertThat(algebra.norm(Polynomial.ZERO)).isEqualTo(Rational.ZERO);
  }

  @Test
  void constantsHaveNoAlgebraAndNegativePowersAreRefused() {
    assertThatThrownBy(() -> ResidueAlgebra.of(Polynomial.ONE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("constant");
    ResidueAlgebra algebra = ResidueAlgebra.of(Polynomial.ofDescending(1, 0, 1));
    assertThatThrownBy(() -> algebra.power(Polynomial.X, BigInteger.valueOf(-1)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("-1");
  }
}
