package rootwright.working.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import cc.redberry.rings.Rational;
import cc.redberry.rings.Rings;
import cc.redberry.rings.bigint.BigInteger;
import cc.redberry.rings.poly.multivar.GroebnerBases;
import cc.redberry.rings.poly.multivar.MonomialOrder;
import cc.redberry.rings.poly.multivar.MultivariatePolynomial;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.working.Stated;
import rootwright.working.answer.Answer;

/**
 * Letters found from conditions, and numbers from their symmetric values, against elimination by
 * Gröbner bases in Rings.
 */
class ConditionsAgreeWithEliminationTest {

  private static final long SEED = Long.getLong("rootwright.seed", 2_126L);
  private static final String[] UNKNOWNS = {"r", "s", "t", "k"};
  private final SplittableRandom random = new SplittableRandom(SEED);

  /** The monic polynomial of least degree in k in the ideal of these polynomials, square-free. */
  private static Polynomial eliminant(List<String> equations) {
    List<MultivariatePolynomial<Rational<BigInteger>>> generators = new ArrayList<>();
    for (String equation : equations) {
      generators.add(MultivariatePolynomial.parse(equation, Rings.Q, MonomialOrder.LEX, UNKNOWNS));
    }
    for (MultivariatePolynomial<Rational<BigInteger>> element :
        GroebnerBases.GroebnerBasis(generators, MonomialOrder.LEX)) {
      if (element.degree(0) == 0 && element.degree(1) == 0 && element.degree(2) == 0) {
        return polynomial(element).squarefreePart().monic();
      }
    }
    throw new IllegalStateException("no polynomial in k alone: " + equations);
  }

  private static Polynomial polynomial(MultivariatePolynomial<Rational<BigInteger>> inK) {
    Polynomial sum = Polynomial.ZERO;
    for (var term : inK) {
      rootwright.algebra.number.Rational coefficient =
          rootwright.algebra.number.Rational.of(number(term.coefficient.numerator()))
              .over(rootwright.algebra.number.Rational.of(number(term.coefficient.denominator())));
      sum = sum.plus(Polynomial.monomial(coefficient, term.exponents[3]));
    }
    return sum;
  }

  private static java.math.BigInteger number(BigInteger value) {
    return new java.math.BigInteger(value.toString());
  }

  /** The monic polynomial whose roots are the values that were found. */
  private static Polynomial found(String polynomial, String find) {
    Answer answer = Stated.solution(polynomial, find).answer();
    Polynomial product = Polynomial.ONE;
    List<Polynomial> least = new ArrayList<>();
    for (ExactValue value : ((Answer.Solutions) answer).values()) {
      if (!least.contains(value.minimalPolynomial())) {
        least.add(value.minimalPolynomial());
        product = product.times(value.minimalPolynomial());
      }
    }
    return product.monic();
  }

  private static List<String> vieta(String e1, String e2, String e3) {
    return List.of(
        "r + s + t - (" + e1 + ")", "r*s + s*t + t*r - (" + e2 + ")", "r*s*t - (" + e3 + ")");
  }

  @Test
  void theLetterOfACubicUnderAnEquationBetweenItsRootsIsTheEliminant() {
    String[] conditions = {"r = 2 s", "r = -s", "r s = 2", "r + s = 3", "r = s"};
    String[] zeros = {"r - 2*s", "r + s", "r*s - 2", "r + s - 3", "r - s"};
    for (int sample = 0; sample < 15; sample++) {
      long a = random.nextLong(-5, 6);
      long b = random.nextLong(1, 8);
      int which = sample % conditions.length;
      List<String> equations = new ArrayList<>(vieta(String.valueOf(-a), "k", String.valueOf(-b)));
      equations.add(zeros[which]);
      String polynomial = "x^3 + (%d)x^2 + kx + %d".formatted(a, b);
      if (a == 0 && which == 1) {
        continue;
      }
      assertThat(found(polynomial, "k if %s, k complex".formatted(conditions[which])))
          .as("%s ; %s, seed %d", polynomial, conditions[which], SEED)
          .isEqualTo(eliminant(equations));
    }
  }

  @Test
  void theLetterOfAQuadraticUnderASymmetricConditionIsTheEliminant() {
    String[] conditions = {"r^2 + s^2 = %d", "r^3 + s^3 = %d", "(r - s)^2 = %d"};
    String[] zeros = {"r^2 + s^2 - %d", "r^3 + s^3 - %d", "(r - s)^2 - %d"};
    for (int sample = 0; sample < 12; sample++) {
      long a = random.nextLong(-4, 5);
      long b = random.nextLong(1, 5);
      long value = random.nextLong(1, 20);
      int which = sample % conditions.length;
      List<String> equations =
          new ArrayList<>(
              List.of("t", "r + s - (k + %d)".formatted(a), "r*s - (%d*k)".formatted(b)));
      equations.add(zeros[which].formatted(value));
      String polynomial = "x^2 - (k + %d)x + %dk".formatted(a, b);
      String condition = conditions[which].formatted(value);
      assertThat(found(polynomial, "k if %s, k complex".formatted(condition)))
          .as("%s ; %s, seed %d", polynomial, condition, SEED)
          .isEqualTo(eliminant(equations));
    }
  }

  @Test
  void aFurtherSumOfPowersOfThreeNumbersIsTheEliminant() {
    for (int sample = 0; sample < 10; sample++) {
      long one = random.nextLong(-3, 4);
      long two = random.nextLong(-9, 10);
      long three = random.nextLong(-9, 10);
      int asked = 4 + sample % 3;
      List<String> equations =
          List.of(
              "r + s + t - (%d)".formatted(one),
              "r^2 + s^2 + t^2 - (%d)".formatted(two),
              "r^3 + s^3 + t^3 - (%d)".formatted(three),
              "k - r^%1$d - s^%1$d - t^%1$d".formatted(asked));
      String find =
          "x^%1$d + y^%1$d + z^%1$d if x+y+z = %2$d, x^2+y^2+z^2 = %3$d, x^3+y^3+z^3 = %4$d"
              .formatted(asked, one, two, three);
      Answer answer = Stated.solution("", find).answer();
      assertThat(((Answer.Exact) answer).value().minimalPolynomial().monic())
          .as("%s, seed %d", find, SEED)
          .isEqualTo(eliminant(equations));
    }
  }
}
