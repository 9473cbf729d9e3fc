package rootwright.algebra.ideal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;

class CommonZerosTest {

  private static final MultivariatePolynomial X = MultivariatePolynomial.unknown(0);
  private static final MultivariatePolynomial Y = MultivariatePolynomial.unknown(1);

  private static MultivariatePolynomial number(long value) {
    return MultivariatePolynomial.constant(Rational.of(value));
  }

  /** Dickson, First Course in the Theory of Equations, 1922, sec 114 ex 1 (p 152). */
  @Test
  void aCircleOfHyperbolaAndTwoLinesMeetInTheFourPrintedPoints() {
    CommonZeros zeros =
        CommonZeros.of(
                List.of(
                    X.power(2).minus(Y.power(2)).minus(number(9)),
                    X.times(Y).minus(Y.times(Rational.of(5)))),
                2,
                40,
                1)
            .orElseThrow();
    assertThat(zeros.complete()).isTrue();
    assertThat(zeros.points()).hasSize(4);
    for (long[] point : new long[][] {{3, 0}, {-3, 0}, {5, 4}, {5, -4}}) {
      assertThat(zeros.points())
          .anyMatch(
              found ->
                  found.get(0).contains(Rational.of(point[0]))
                      && found.get(1).contains(Rational.of(point[1])));
    }
  }

  @Test
  void everySampleOfACurveLiesOnIt() {
    MultivariatePolynomial circle = X.power(2).plus(Y.power(2)).minus(number(25));
    for (int seed = 1; seed <= 10; seed++) {
      CommonZeros zeros = CommonZeros.of(List.of(circle), 2, 40, seed).orElseThrow();
      assertThat(zeros.complete()).isFalse();
      assertThat(zeros.points()).isNotEmpty();
      for (List<ComplexBall> point : zeros.points()) {
        assertThat(CommonZeros.value(circle, point, 165).containsZero())
            .as("seed " + seed)
            .isTrue();
      }
    }
  }

  @Test
  void equationsThatContradictEachOtherHaveNoZeros() {
    assertThat(CommonZeros.of(List.of(X.minus(number(1)), X.minus(number(2))), 1, 40, 1)).isEmpty();
  }

  @Test
  void aDoublePointIsFoundOnce() {
    assertThat(
            CommonZeros.of(List.of(X.minus(number(3)).power(2)), 1, 40, 1).orElseThrow().points())
        .hasSize(1);
  }
}
