package rootwright.working.route;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BuildFromElementaryTest {

  private final Route route = new BuildFromElementary();

  /** Worked out independently, by hand. */
  @ParameterizedTest
  @CsvSource({
    "4 -8 3 6, sum r^2, 5/2",
    "2 -6 1 5, sum r^2, 8",
    "2 -6 1 5, sum r^3, 15",
    "1 -2 6 -3, sum r^2, -8",
    "1 -3 2 5 -7, sum 1/r^2, 53/49",
    "1 -4 1 1, (s+t)/r + (t+r)/s + (r+s)/t, -7",
    "1 -5 2 -1, sum r^2 s, 7",
    "1 -6 4, r/s + s/r, 7",
    "1 -2 -5 3 2, sum (r+s)^2, 32",
    "1 -2 -5 3 2, sum (r-s)^2, 52",
    "5 -10 1 -4, sum 1/(r-3), -19/11",
    "1 2 -7 4, sum r^2, 18",
  })
  void theAskIsPutTogetherFromTheCoefficients(String coefficients, String ask, String value) {
    assertThat(Exercise.of(coefficients, ask).valueBy(route)).hasToString(value);
  }

  @Test
  void theSumOfSquaresTakesTwoCoefficientsAndOneProduct() {
    assertThat(Exercise.of("4 -8 3 6", "sum r^2").linesBy(route))
        .containsExactly(
            "e_1 = r + s + t = -(-8/4) = 2",
            "e_2 = r*s + r*t + s*t = 3/4",
            "sum(r^2) = e_1^2 - 2*e_2 = 2^2 - 2*(3/4) = 5/2");
  }

  @Test
  void eachProductSaysWhatItMakesBesides() {
    var steps = Exercise.of("2 -6 1 5", "sum r^3").by(route).steps();
    assertThat(steps).hasSize(6);
    assertThat(steps.get(3).reason()).contains("makes").contains("besides");
  }

  @Test
  void nothingIsBuiltThatCanBeReadOff() {
    assertThat(Exercise.of("4 -8 3 6", "rs+st+tr").refusalOf(route)).contains("at once");
  }

  @Test
  void aHighPowerIsLeftToOtherRoutes() {
    assertThat(Exercise.of("1 0 -1 -1", "sum r^13").refusalOf(route)).contains("too many");
  }
}
