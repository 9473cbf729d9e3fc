package rootwright.working.route;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NewtonSumsTest {

  private final Route route = new NewtonSums();

  /** Worked out independently, by hand. */
  @ParameterizedTest
  @CsvSource({
    "1 -2 3 -5, S_2, -2",
    "1 -2 3 -5, S_3, 5",
    "1 -2 3 -5, S_4, 26",
    "1 -2 3 -5, S_7, 51",
    "2 -6 1 5, p_4, 67/2",
    "2 -6 1 5, sum(r^2+4), 20",
    "1 0 -5 3, sum r^2 s, 9",
    "1 0 -5 3, sum r^3 s, -50",
    "1 0 -4 1, sum r^4, 32",
  })
  void powerSumsFollowFromTheCoefficients(String coefficients, String ask, String value) {
    assertThat(Exercise.of(coefficients, ask).valueBy(route)).hasToString(value);
  }

  @Test
  void theAskStandsAtTheFrontOfItsOwnIdentity() {
    assertThat(Exercise.of("1 -2 3 -5", "r^3+s^3+t^3").linesBy(route))
        .endsWith("r^3 + s^3 + t^3 = S_3 = e_1*S_2 - e_2*S_1 + 3*e_3 = 2*(-2) - 3*2 + 3*5 = 5");
  }

  @Test
  void theConstantCountsOnceForEveryRoot() {
    assertThat(Exercise.of("2 -6 1 5", "sum(r^2+4)").linesBy(route))
        .endsWith("sum(r^2 + 4) = S_2 + 3*4 = 8 + 3*4 = 20");
  }

  @Test
  void powerSumsAreCalledAsTheAskCallsThem() {
    assertThat(Exercise.of("1 -2 3 -5", "p_2").linesBy(route).get(0)).startsWith("p_1 = e_1");
  }

  @Test
  void sumsThatAMissingPowerMakesUselessAreNotWorkedOut() {
    assertThat(Exercise.of("1 0 -4 1", "sum r^4").linesBy(route))
        .noneMatch(line -> line.startsWith("S_3"));
  }

  @Test
  void farPowersAreLeftToTheRecurrence() {
    assertThat(Exercise.of("1 -1 -2 3", "S_20").refusalOf(route)).contains("recurrence");
  }

  @Test
  void reciprocalsAreNoPowerSums() {
    assertThat(Exercise.of("1 -1 -2 3", "sum 1/r").refusalOf(route)).contains("denominator");
  }
}
