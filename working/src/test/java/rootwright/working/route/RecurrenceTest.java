package rootwright.working.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecurrenceTest {

  private final Route route = new Recurrence();

  /** Worked out independently. */
  @ParameterizedTest
  @CsvSource({
    "1 0 -1 -1, sum r^11, 22",
    "1 -1 -2 3, S_20, 5450",
    "1 -1 0 0 -3, S_9, 109",
    "1 -3 -2, r^5+s^5, 573",
    "1 -1 -3, S_10, 4207",
    "1 -3 4 -7, sum(r^3-3r^2+r+5), 27",
    "2 -3 4 7, S_4, -415/16",
  })
  void theTableEndsInTheAsk(String coefficients, String ask, String value) {
    assertThat(Exercise.of(coefficients, ask).valueBy(route)).hasToString(value);
  }

  @Test
  void theTableStartsWithTheNumberOfRoots() {
    List<String> lines = Exercise.of("1 -1 -2 3", "S_20").linesBy(route);
    assertThat(lines.get(0)).isEqualTo("r^3 = r^2 + 2*r - 3");
    assertThat(lines.get(1)).isEqualTo("S_0 = 3");
    assertThat(lines).contains("S_3 = S_2 + 2*S_1 - 3*S_0 = 5 + 2 - 3*3 = -2").hasSize(23);
  }

  @Test
  void onlySumsThatAreNeededStandInTheTable() {
    assertThat(Exercise.of("1 0 -1 0 2 0 -1", "S_8").linesBy(route))
        .noneMatch(line -> line.startsWith("S_3") || line.startsWith("S_7"));
  }

  @Test
  void aVeryLongTableIsDeclinedWithItsLength() {
    assertThat(Exercise.of("1 0 -1 -1", "S_1000").refusalOf(route)).contains("998 lines");
  }

  @Test
  void powersBelowTheDegreeNeedNoRecurrence() {
    assertThat(Exercise.of("1 0 -1 -1", "S_2").refusalOf(route)).contains("stays below");
  }
}
