package rootwright.working.route;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SplitOffRationalRootTest {

  private final Route route = new SplitOffRationalRoot();

  /** Worked out independently, by hand. */
  @ParameterizedTest
  @CsvSource({
    "1 2 -7 4, sum r^2, 18",
    "1 -3 1 2, sum 1/(r-3), -2",
    "1 -3 1 2, S_5, 43",
    "2 -3 1 -6, (r+s)(s+t)(t+r), -9/4",
    "1 -3 1 2, product(1+r), 3",
    "6 -5 1, sum r^3, 35/216",
    "1 0 -3 2, sum r^2 s, 6",
    "1 0 -1 0, sum r^4, 2",
  })
  void knownRootsArePutIn(String coefficients, String ask, String value) {
    assertThat(Exercise.of(coefficients, ask).valueBy(route)).hasToString(value);
  }

  @Test
  void aRepeatedRootIsPutInAsOftenAsItOccurs() {
    assertThat(Exercise.of("1 2 -7 4", "sum r^2").linesBy(route))
        .containsExactly(
            "P(-4) = (-4)^3 + 2*(-4)^2 - 7*(-4) + 4 = 0",
            "P(1) = 1 + 2 - 7 + 4 = 0",
            "P(x) = (x + 4)*(x - 1)^2",
            "sum(r^2) = (-4)^2 + 1^2 + 1^2 = 18");
  }

  @Test
  void theLastTwoRootsAreKnownByTheirSumAndProduct() {
    assertThat(Exercise.of("1 -3 1 2", "S_5").linesBy(route))
        .contains("P(x) = (x - 2)*(x^2 - x - 1)", "s + t = -(-1) = 1", "s*t = -1")
        .endsWith("S_5 = 2^5 + 11 = 43");
  }

  @Test
  void withoutARationalRootTheRouteDeclines() {
    assertThat(Exercise.of("1 0 -4 1", "sum r^2").refusalOf(route))
        .isEqualTo("there is no rational root");
  }

  @Test
  void aCubicThatIsLeftIsNotWorthTheTrouble() {
    assertThat(Exercise.of("1 -2 -4 9 -2", "sum r^2").refusalOf(route)).contains("degree 3");
  }
}
