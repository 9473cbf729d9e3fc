package rootwright.working.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.working.Stated;
import rootwright.working.solve.Solution;

class EulerSumsTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_205L);

  /**
   * Euler's identities (from memory of Burnside and Panton and of Serret): the sum is 0 for k below
   * n − 1, 1/a for k = n − 1, and −b/a² for k = n.
   */
  @ParameterizedTest(name = "k = {1} of {0}: {2}")
  @CsvSource(
      delimiter = ';',
      value = {
        "x^3-2x-5; 0; 0",
        "x^3-2x-5; 2; 1",
        "x^3-2x-5; 3; 0",
        "x^4-3x^3+x-7; 1; 0",
        "x^4-3x^3+x-7; 3; 1",
        "x^4-3x^3+x-7; 4; 3",
        "x^3-6x+2; 4; 6",
        "x^3-6x+2; 5; -2",
        "2x^3-3x^2+4x+7; 2; 1/2",
        "2x^3-3x^2+4x+7; 3; 3/4",
      })
  void eulersIdentitiesComeOut(String polynomial, int k, String value) {
    Solution solution = Stated.solution(polynomial, "Σ r^%d/P'(r)".formatted(k));
    assertThat(Stated.text(solution.answer())).isEqualTo(value);
    assertThat(Stated.routes(solution)).contains("euler");
  }

  @Test
  void itIsSaidWhyARootMayBePutIn() {
    Solution solution = Stated.solution("x^3-6x+2", "Σ r^4/P'(r)");
    assertThat(
            solution.routes().stream()
                .filter(working -> working.route().equals("euler"))
                .flatMap(working -> working.steps().stream()))
        .anySatisfy(
            step ->
                assertThat(step.reason())
                    .contains("identity of polynomials", "although it was excluded"));
  }

  @Test
  void aRepeatedRootLeavesTheSumWithoutValue() {
    Solution solution = Stated.solution("(x-1)^2 (x+4)", "Σ r^2/P'(r)");
    assertThat(solution.answer().kind()).isEqualTo("none");
    assertThat(Stated.warnings(solution)).anyMatch(text -> text.startsWith("zero-denominator"));
  }

  @Test
  void theSumsAreCompleteSymmetricPolynomials() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int trial = 0; trial < 8; trial++) {
      String polynomial =
          "x^3 + (%d)x^2 + (%d)x + 1".formatted(random.nextInt(-4, 5), random.nextInt(-4, 5));
      int k = random.nextInt(2, 8);
      Solution sum = Stated.solution(polynomial, "Σ r^%d/P'(r)".formatted(k));
      if (!sum.answer().kind().equals("none")) {
        assertThat(Stated.text(sum.answer()))
            .as("seed %d: %s, k = %d", SEED, polynomial, k)
            .isEqualTo(Stated.text(polynomial, "h_%d".formatted(k - 2)));
      }
    }
  }

  @Test
  void powerSumsWithNegativeIndexHaveARoute() {
    Solution solution = Stated.solution("x^3 - x - 1", "S_-5");
    assertThat(Stated.text(solution.answer())).isEqualTo("4");
    assertThat(Stated.routes(solution)).contains("reversed-sums");
    assertThat(Stated.lines(solution, "reversed-sums")).contains("S_(-5) = 4");
  }
}
