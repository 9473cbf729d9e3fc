package rootwright.working.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.working.Stated;
import rootwright.working.solve.Solution;

class PowerSumSequenceTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_206L);

  /** Sequences of the OEIS whose terms are power sums; generating functions as printed there. */
  @ParameterizedTest(name = "{0}: {2}")
  @CsvSource(
      delimiter = ';',
      value = {
        "A000032 Lucas; x^2-x-1; recurrence; S_k = S_(k - 1) + S_(k - 2)",
        "A000032 Lucas; x^2-x-1; generating function; (-x + 2)/(-x^2 - x + 1)",
        "A000032 Lucas, period as of A106291 (from memory); x^2-x-1; period mod 10; 12",
        "A001608 Perrin; x^3-x-1; recurrence of the power sums; S_k = S_(k - 2) + S_(k - 3)",
        "A001608 Perrin; x^3-x-1; generating function of S_k; (-x^2 + 3)/(-x^3 - x^2 + 1)",
        "A001608 Perrin, period as of A104217 (from memory); x^3-x-1; period mod 7; 48",
        "A001608 Perrin, period as of A104217 (from memory); x^3-x-1; period mod 2; 7",
        "A001644 tribonacci-Lucas; x^3-x^2-x-1; recurrence;"
            + "S_k = S_(k - 1) + S_(k - 2) + S_(k - 3)",
        "A002203 Pell-Lucas; x^2-2x-1; are all power sums even?; true",
        "A002203 Pell-Lucas; x^2-2x-1; are all power sums divisible by 4; false",
        "A094648; x^3+x^2-2x-1; are all power sums whole?; true",
        "A001608 Perrin; x^3-x-1; last two digits of S_100; 2",
        "A001608 Perrin; x^3-x-1; S_-5; 4",
      })
  void printedSequencesAreFound(String source, String polynomial, String ask, String answer) {
    assertThat(Stated.text(polynomial, ask)).as(source).isEqualTo(answer);
  }

  @Test
  void theRecurrenceIsPZeroTimesAPowerAddedUp() {
    Solution solution = Stated.solution("2x^2 - 3x + 5", "recurrence");
    assertThat(Stated.lines(solution, "vanishing"))
        .startsWith("r^2 = 3/2*r - 5/2", "S_k = 3/2*S_(k - 1) - 5/2*S_(k - 2)");
    assertThat(Stated.slips(solution)).contains("lead-forgotten S_k = 3*S_(k - 1) - 5*S_(k - 2)");
  }

  @Test
  void closedFactsAreTold() {
    assertThat(Stated.lines(Stated.solution("x^3 - x - 1", "recurrence"), "vanishing"))
        .anyMatch(line -> line.contains("divisible by p for every prime p"))
        .anyMatch(line -> line.contains("odd, even, even, odd, even, odd, odd"));
  }

  @Test
  void sumsOfFractionsAreNotWholeAndHaveNoPeriod() {
    assertThat(Stated.text("2x^2 - 3x + 5", "are all power sums whole?")).isEqualTo("false");
    Solution solution = Stated.solution("2x^2 - 3x + 5", "period mod 7");
    assertThat(solution.answer().kind()).isEqualTo("none");
    assertThat(Stated.refusal("x^2 - x - 1", "period mod 1")).contains("not between 2");
  }

  @Test
  void aPeriodMayBeginLater() {
    Solution solution = Stated.solution("x^2 - 3x + 6", "period mod 6");
    assertThat(Stated.warnings(solution)).anyMatch(text -> text.contains("come only once"));
  }

  @Test
  void theRemaindersReturnAfterThePeriodAndNoSooner() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int trial = 0; trial < 10; trial++) {
      int a = random.nextInt(-4, 5);
      int b = random.nextInt(-4, 5);
      int m = random.nextInt(2, 12);
      String polynomial = "x^2 + (%d)x + (%d)".formatted(a, b);
      int period = Integer.parseInt(Stated.text(polynomial, "period mod " + m));
      long[] sums = new long[3 * m * m + 3];
      sums[0] = 2 % m;
      sums[1] = Math.floorMod(-a, m);
      for (int k = 2; k < sums.length; k++) {
        sums[k] = Math.floorMod(-a * sums[k - 1] - b * sums[k - 2], m);
      }
      int from = m * m;
      int least = 1;
      while (sums[from] != sums[from + least] || sums[from + 1] != sums[from + 1 + least]) {
        least++;
      }
      assertThat(period).as("seed %d: %s mod %d", SEED, polynomial, m).isEqualTo(least);
    }
  }
}
