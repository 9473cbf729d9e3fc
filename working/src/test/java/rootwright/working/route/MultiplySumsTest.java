package rootwright.working.route;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MultiplySumsTest {

  private final Route route = new MultiplySums();

  /**
   * The first by the formula pq/r − 3 of Burnside and Panton, The Theory of Equations, art 27 (from
   * memory); the others worked out independently.
   */
  @ParameterizedTest
  @CsvSource({
    "1 3 2 -5, sum r/s, -21/5",
    "1 0 0 0 -1 1, sum r^2/s, 0",
    "1 -6 4, sum r/s, 7",
    "1 -3 2 5 -7, sum 3 r/s^2, 372/49",
  })
  void pairsAreCountedThroughAProductOfSums(String coefficients, String ask, String value) {
    assertThat(Exercise.of(coefficients, ask).valueBy(route)).hasToString(value);
  }

  @Test
  void everyRootOverItselfIsTakenOff() {
    assertThat(Exercise.of("1 3 2 -5", "sum r/s").linesBy(route))
        .startsWith("sum(r/s) = S_1*sum(1/r) - 3")
        .endsWith("sum(r/s) = -3*(2/5) - 3 = -21/5");
  }

  @Test
  void twoRootsBelowTheStrokeAreLeftToTheCommonDenominator() {
    assertThat(Exercise.of("1 -2 -5 3 2", "sum 1/(r s)").refusalOf(route)).contains("over a power");
  }

  @Test
  void withoutADenominatorOtherRoutesAreShorter() {
    assertThat(Exercise.of("1 3 2 -5", "sum r^2 s").refusalOf(route)).contains("over a power");
  }

  @Test
  void aZeroRootForbidsIt() {
    assertThat(Exercise.of("1 3 2 0", "sum r/s").refusalOf(route)).contains("zero");
  }
}
