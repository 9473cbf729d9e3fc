package rootwright.working.fraction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cc.redberry.rings.Rings;
import cc.redberry.rings.poly.univar.UnivariatePolynomial;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.letters.Lettered;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;

/** Fractions with numbers, split into partial fractions. */
class ExplicitFractionsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // Hall & Knight, Higher Algebra, 1887, chapter XXIII, worked examples (from memory).
        "partial fractions of (23x-11x^2)/((2x-1)(9-x^2)); 1/(2*x - 1) + 4/(x + 3) + 1/(x - 3)",
        "partial fractions of (3x^2+x-2)/((x-2)^2(1-2x)); 1/(3*(2*x - 1)) - 5/(3*(x - 2)) - 4/(x - 2)^2",
        "partial fractions of (9x^3-24x^2+48x)/((x-2)^4(x+1)); -1/(x + 1) + 1/(x - 2) + 6/(x - 2)^2 + 12/(x - 2)^3 + 24/(x - 2)^4",
        // Sophie Germain's factors of x⁴ + 4.
        "partial fractions of 1/(x^4+4); -(x - 2)/(8*(x^2 - 2*x + 2)) + (x + 2)/(8*(x^2 + 2*x + 2))",
        // By hand: covering up.
        "decompose (5x+3)/(x^2-3x+2) into partial fractions; -8/(x - 1) + 13/(x - 2)",
        "partial fractions of (x^4+1)/(x^3-x); x - 1/x + 1/(x + 1) + 1/(x - 1)",
        "A, B, C if (x+3)/((x-1)^2(x+2)) = A/(x-1)+B/(x-1)^2+C/(x+2); A = -1/9, B = 4/3, C = 1/9",
        "A, B, C if (x+3)/((x-1)(x^2+1)) = A/(x-1)+(Bx+C)/(x^2+1); A = 2, B = -2, C = -1",
        "A+B+C if (x+3)/((x-1)^2(x+2)) = A/(x-1)+B/(x-1)^2+C/(x+2); 4/3",
        "1/A+1/B if A/(x-1)+B/(x-3) = 2/((x-1)(x-3)); 0",
      })
  void fractionsAreSplitByAWorking(String find, String answer) throws UnreadableException {
    Solution solution = Lettered.work("", find);
    assertThat(Lettered.text(solution)).isEqualTo(answer);
    assertThat(solution.routes()).extracting(Working::route).contains("compare-coefficients");
  }

  @Test
  void coveringUpIsTheShorterWayWhereAllFactorsAreLinear() throws UnreadableException {
    assertThat(Lettered.work("", "partial fractions of (5x+3)/(x^2-3x+2)").routes())
        .extracting(Working::route)
        .first()
        .isEqualTo("cover-up");
  }

  @Test
  void aFormWithoutTheLowerPowerIsNamedWithTheRightOne() throws UnreadableException {
    Solution solution = Lettered.work("", "A, B if (x+3)/((x-1)^2(x+2)) = A/(x-1)^2+B/(x+2)");
    assertThat(Lettered.codes(solution)).containsExactly("repeated-root");
    assertThat(solution.warnings().toString()).contains("A/(x − 1) + B/(x − 1)² + C/(x + 2)");
  }

  @Test
  void theLowerPowerForgottenIsASlip() throws UnreadableException {
    assertThat(
            Lettered.slips(
                Lettered.work("", "A+B+C if (x+3)/((x-1)^2(x+2)) = A/(x-1)+B/(x-1)^2+C/(x+2)")))
        .contains("lower-power-forgotten 13/9");
  }

  @Test
  void thePolynomialMayStandInItsPlace() throws UnreadableException {
    assertThat(Lettered.answer("x^3-3x+2", "A+B+C if 1/P(x) = A/(x-1)+B/(x-1)^2+C/(x+2)"))
        .isEqualTo("1/3");
    assertThat(Lettered.answer("(5x+3)/(x^2-3x+2)", "partial fractions"))
        .isEqualTo("-8/(x - 1) + 13/(x - 2)");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "A, B if 1/((x-1)(x-3)) = A/(x-1)+B/(x-4); a factor of the denominator",
        "partial fractions of 1/(x^9+x+1); degree 9",
        "D if 1/((x-1)(x-3)) = A/(x-1)+B/(x-3); Only the letters above the strokes",
      })
  void otherFormsAreRefusedWithTheReason(String find, String reason) {
    assertThatThrownBy(() -> Lettered.work("", find))
        .isInstanceOf(UnreadableException.class)
        .hasMessageContaining(reason);
  }

  @Test
  void theSumOfThePartsIsTheFractionAsRingsMultipliesItOut() {
    long seed = Long.getLong("rootwright.seed", 20_267L);
    SplittableRandom random = new SplittableRandom(seed);
    for (int sample = 0; sample < 30; sample++) {
      Polynomial below = Polynomial.ONE;
      for (int k = 0; k < random.nextInt(2, 5); k++) {
        below = below.times(Polynomial.withRoots(List.of(Rational.of(random.nextInt(-3, 4)))));
      }
      List<Rational> ascending = new ArrayList<>();
      for (int k = 0; k < below.degree(); k++) {
        ascending.add(Rational.of(random.nextInt(-5, 6)));
      }
      Polynomial above = Polynomial.ofAscending(ascending);
      ExplicitFractions fractions =
          new ExplicitFractions("x", above, below, FractionReader.parts(below, "x"));
      List<Rational> solution = fractions.solution().orElseThrow();
      var ring = Rings.Q;
      UnivariatePolynomial<cc.redberry.rings.Rational<cc.redberry.rings.bigint.BigInteger>> sum =
          UnivariatePolynomial.zero(ring);
      int at = 0;
      for (ExplicitFractions.Part part : fractions.parts()) {
        sum = sum.add(rings(fractions.cofactor(part)).multiply(number(solution.get(at++))));
      }
      assertThat(sum.equals(rings(above))).as("%s over %s, seed %d", above, below, seed).isTrue();
    }
  }

  private static cc.redberry.rings.Rational<cc.redberry.rings.bigint.BigInteger> number(
      Rational number) {
    return new cc.redberry.rings.Rational<>(
        Rings.Z,
        new cc.redberry.rings.bigint.BigInteger(number.numerator()),
        new cc.redberry.rings.bigint.BigInteger(number.denominator()));
  }

  private static UnivariatePolynomial<
          cc.redberry.rings.Rational<cc.redberry.rings.bigint.BigInteger>>
      rings(Polynomial polynomial) {
    List<cc.redberry.rings.Rational<cc.redberry.rings.bigint.BigInteger>> ascending =
        new ArrayList<>();
    polynomial.ascending().forEach(c -> ascending.add(number(c)));
    return UnivariatePolynomial.create(
        Rings.Q, ascending.toArray(cc.redberry.rings.Rational[]::new));
  }
}
