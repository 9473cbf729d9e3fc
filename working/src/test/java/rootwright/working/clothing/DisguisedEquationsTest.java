package rootwright.working.clothing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.working.Stated;
import rootwright.working.solve.Solution;

class DisguisedEquationsTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_208L);

  /** Common practice; every value was worked out by hand and put back. */
  @ParameterizedTest(name = "{0}; {1}")
  @CsvSource(
      delimiter = ';',
      value = {
        "4^x - 6*2^x + 7 = 0; sum of the solutions; log(7, 2)",
        "9^x - 2*3^x - 5 = 0; number of solutions; 1",
        "9^x - 2*3^x - 5 = 0; solutions; log(1 + sqrt(6), 3)",
        "2^(2x+1) - 5*2^x + 2 = 0; solutions; -1 or 1",
        "√(x+7) = x-5; solutions; 9",
        "√(x+7) = x-5; sum of the solutions; 9",
        "√(2x+3) = x; solve for x; 3",
        "3√(x+1) = x+3; product of the solutions; 0",
        "1/(x-1)+1/(x-2)+1/(x-4) = 1; sum of the solutions; 10",
        "x/(x-2) = 2/(x-2) + 3; solutions; no such value",
        "1/x + 1/(x+1) = 3/2; solutions; -2/3 or 1",
      })
  void equationsInOtherClothesAreSolved(String equation, String ask, String answer) {
    assertThat(Stated.text(equation, ask)).isEqualTo(answer);
  }

  @Test
  void whatTheWayBackDoesNotAllowIsNamed() {
    Solution solution = Stated.solution("√(x+7) = x-5", "sum of the solutions");
    assertThat(Stated.warnings(solution))
        .singleElement()
        .asString()
        .startsWith("extraneous: x = 2 is no solution");
    assertThat(Stated.slips(solution)).containsExactly("extraneous-kept 11");
    assertThat(solution.statement())
        .isEqualTo("Find the sum of the real solutions of √(x + 7) = x − 5.");
  }

  @Test
  void theValueOfThePowerIsNotTheUnknown() {
    Solution solution = Stated.solution("4^x - 6*2^x + 7 = 0", "sum of the solutions");
    assertThat(Stated.slips(solution)).contains("wrong-letter 6");
    assertThat(solution.slips()).extracting("name").contains("logarithm-of-the-sum");
  }

  @Test
  void anEquationThatIsAPolynomialIsLeftToOthers() {
    assertThat(Stated.solution("x^2/3 - 5x = 6", "sum of the roots").kind()).isEqualTo("value");
    assertThat(Stated.refusal("√(x+7) = x-5", "Σ 1/r")).contains("real solutions can be asked");
  }

  @Test
  void solutionsOfSquareRootEquationsSolveThem() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int trial = 0; trial < 10; trial++) {
      int root = random.nextInt(0, 9);
      int shift = random.nextInt(-6, 7);
      int inside = (root + shift) * (root + shift) - 3 * root;
      // x = root solves √(3x + inside) = x + shift exactly when root + shift is not negative.
      String equation = "√(3x + (%d)) = x + (%d)".formatted(inside, shift);
      String solutions = " or " + Stated.text(equation, "solutions") + " or ";
      assertThat(solutions.contains(" or " + root + " or "))
          .as("seed %d: %s gives %s", SEED, equation, solutions)
          .isEqualTo(root + shift >= 0);
    }
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = ';',
      value = {
        "x^3-12x^2+44x-46; area of the triangle; 2*sqrt(3)",
        "x^3-12x^2+44x-46; circumradius; 23*sqrt(3)/12",
        "(x-3)(x-4)(x-5); area; 6",
        "(x-3)(x-4)(x-5); inradius; 1",
        "(x-5)^2 (x-6); area of the triangle with these sides; 12",
        "(x-13)(x-14)(x-15); area; 84",
      })
  void aTriangleWithTheRootsForSidesIsMeasured(String cubic, String ask, String value) {
    assertThat(Stated.text(cubic, ask)).isEqualTo(value);
  }

  @Test
  void rootsThatAreNoSidesAreRefusedWithTheReason() {
    assertThat(Stated.warnings(Stated.solution("(x-1)(x-2)(x-4)", "area of the triangle")))
        .anyMatch(text -> text.contains("less than the sum of the other two"));
    assertThat(Stated.warnings(Stated.solution("x^3 - 3x^2 + 5x - 3", "area of the triangle")))
        .anyMatch(text -> text.contains("not all roots are real"));
  }
}
