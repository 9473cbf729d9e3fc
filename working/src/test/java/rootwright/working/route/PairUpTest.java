package rootwright.working.route;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PairUpTest {

  private final Route route = new PairUp();

  /** Worked out independently, by Newton's identities. */
  @ParameterizedTest
  @CsvSource({
    "2 -5 1 -5 2, sum r^2, 21/4",
    "2 -5 1 -5 2, sum 1/r, 5/2",
    "1 0 -5 0 3, sum r^4, 38",
    "1 0 -5 0 3, sum(r^3+2r+1), 4",
    "1 2 3 4 3 2 1, sum(r^3+1/r), -4",
  })
  void halfTheDegreeIsEnough(String coefficients, String ask, String value) {
    assertThat(Exercise.of(coefficients, ask).valueBy(route)).hasToString(value);
  }

  @Test
  void reciprocalRootsAreRegroupedByTheirSum() {
    assertThat(Exercise.of("2 -5 1 -5 2", "sum r^2").linesBy(route))
        .startsWith(
            "P(x)/x^2 = 2*(x + 1/x)^2 - 5*(x + 1/x) - 3", "y = r + 1/r", "r^2 + 1/r^2 = y^2 - 2");
  }

  @Test
  void oddPowersOfOppositeRootsCancel() {
    assertThat(Exercise.of("1 0 -5 0 3", "sum r^3").linesBy(route))
        .containsExactly(
            "P(-x) = P(x) = (x^2)^2 - 5*x^2 + 3", "r^3 + (-r)^3 = 0", "sum(r^3) = 2*0 = 0");
  }

  @Test
  void rootsWithoutPartnersAreNotPaired() {
    assertThat(Exercise.of("1 -2 -5 3 2", "sum r^2").refusalOf(route)).contains("pairs");
  }
}
