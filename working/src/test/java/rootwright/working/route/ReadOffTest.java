package rootwright.working.route;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values worked out independently, by hand. */
class ReadOffTest {

  private final Route route = new ReadOff();

  @ParameterizedTest
  @CsvSource({
    "3 -7 5 11, r+s+t, 7/3",
    "3 -7 5 11, rs+st+tr, 5/3",
    "3 -7 5 11, rst, -11/3",
    "1 -3 2 5 -7, sum 1/r, 5/7",
    "1 -2 -5 3 2, sum 1/(rs), -5/2",
    "1 -4 2 6, product(1+r), 1",
    "1/2 -5/4 0 1/3, e_1, 5/2",
  })
  void whatTheCoefficientsShowIsReadOff(String coefficients, String ask, String value) {
    assertThat(Exercise.of(coefficients, ask).valueBy(route)).hasToString(value);
  }

  @Test
  void aSingleCoefficientTakesOneLine() {
    assertThat(Exercise.of("3 -7 5 11", "r+s+t").linesBy(route))
        .containsExactly("r + s + t = e_1 = -(-7/3) = 7/3");
  }

  @Test
  void theSumOfReciprocalsIsWrittenOverTheProductOfTheRoots() {
    assertThat(Exercise.of("1 -3 2 5 -7", "sum 1/r").linesBy(route))
        .endsWith("sum(1/r) = e_3/e_4 = -5/(-7) = 5/7");
  }

  @Test
  void missingPowersAreSaidOnce() {
    assertThat(Exercise.of("1 0 0 -2 5", "2*e_1 + 3*e_2 + e_3").linesBy(route).get(0))
        .isEqualTo("e_1 = e_2 = 0");
  }

  @Test
  void powersOfRootsAreNotReadOff() {
    assertThat(Exercise.of("1 -4 2 6", "sum r^2").refusalOf(route)).contains("powers of roots");
  }

  @Test
  void anAskThatExchangingRootsChangesIsNotReadOff() {
    assertThat(Exercise.of("1 -4 2 6", "r-s").refusalOf(route)).contains("exchanged");
  }

  @Test
  void aZeroRootForbidsTheSumOfReciprocals() {
    assertThat(Exercise.of("1 -4 2 0", "1/r+1/s+1/t").refusalOf(route)).contains("zero");
  }
}
