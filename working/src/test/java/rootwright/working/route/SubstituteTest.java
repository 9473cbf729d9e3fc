package rootwright.working.route;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SubstituteTest {

  private final Route route = new Substitute();

  /** Worked out independently, by hand. */
  @ParameterizedTest
  @CsvSource({
    "1 -4 2 6, (r+s)(s+t)(t+r), 14",
    "1 -4 1 1, (s+t)/r + (t+r)/s + (r+s)/t, -7",
    "1 2 -3 5, sum 1/(r+s), 1/11",
    "2 3 2 -5, product(r s + 2), 43/4",
    "1 0 -4 1, (r+s)^3 + (s+t)^3 + (t+r)^3, 3",
  })
  void oneRootIsLeftInEachTerm(String coefficients, String ask, String value) {
    assertThat(Exercise.of(coefficients, ask).valueBy(route)).hasToString(value);
  }

  @Test
  void aProductOfSumsIsOneValueOfThePolynomial() {
    assertThat(Exercise.of("1 -4 2 6", "(r+s)(s+t)(t+r)").linesBy(route))
        .containsExactly(
            "r + s = 4 - t",
            "(r + s)*(s + t)*(t + r) = product(4 - t) = P(4) = 4^3 - 4*4^2 + 2*4 + 6 = 14");
  }

  @Test
  void aSumOfTwoInTheDenominatorGetsItsOwnPolynomial() {
    assertThat(Exercise.of("1 2 -3 5", "sum 1/(r+s)").linesBy(route))
        .contains("y = -2 - t", "1/(r + s) = 1/y", "y^3 + 4*y^2 + y - 11 = 0");
  }

  /** Worked out independently, with a common denominator. */
  @ParameterizedTest
  @CsvSource({
    "1 -2 7 -3, sum (r+1)/(r-2), 0",
    "1 0 -4 1, sum (r^2+1)/(3-r)^2, 485/128",
    "1 0 0 0 -1 3, sum (r^2+1)/r, 1/3",
    "2 -1, sum (r+3)/(r-1), -7",
  })
  void whatStandsAboveAndBelowGetsOneName(String coefficients, String ask, String value) {
    assertThat(Exercise.of(coefficients, ask).valueBy(route)).hasToString(value);
  }

  @Test
  void theNameIsTheExpressionBelowTheStroke() {
    assertThat(Exercise.of("1 -2 7 -3", "sum (r+1)/(r-2)").linesBy(route))
        .startsWith("y = r - 2", "(r + 1)/(r - 2) = 3/y + 1", "y^3 + 4*y^2 + 11*y + 11 = 0");
    assertThat(Exercise.of("1 -2 7 -3", "sum (r+1)/(2-r)").linesBy(route)).contains("y = 2 - r");
  }

  @Test
  void whatStandsOnceNeedsNoName() {
    assertThat(Exercise.of("1 -4 2 6", "sum r^2").refusalOf(route)).contains("twice");
    assertThat(Exercise.of("1 -4 2 6", "sum 1/(r-1)").refusalOf(route)).contains("twice");
  }

  @Test
  void twoRootsThatSumToZeroForbidTheirReciprocal() {
    assertThat(Exercise.of("1 -2 -1 2", "sum 1/(r+s)").refusalOf(route)).contains("zero");
  }
}
