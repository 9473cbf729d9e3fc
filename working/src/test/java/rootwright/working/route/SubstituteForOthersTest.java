package rootwright.working.route;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SubstituteForOthersTest {

  private final Route route = new SubstituteForOthers();

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

  @Test
  void termsWithOneRootNeedNoSubstitution() {
    assertThat(Exercise.of("1 -4 2 6", "sum r^2").refusalOf(route)).contains("one root");
  }

  @Test
  void twoRootsThatSumToZeroForbidTheirReciprocal() {
    assertThat(Exercise.of("1 -2 -1 2", "sum 1/(r+s)").refusalOf(route)).contains("zero");
  }
}
