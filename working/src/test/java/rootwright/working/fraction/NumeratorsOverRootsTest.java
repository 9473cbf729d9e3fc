package rootwright.working.fraction;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.number.Rational;
import rootwright.working.Stated;
import rootwright.working.solve.Solution;

class NumeratorsOverRootsTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_207L);

  /**
   * Numerators F(r)/P′(r): Hardy, A Course of Pure Mathematics, 1921, Examples XLVIII ex 3 (p 235).
   * The decomposition of (23x − 11x²)/((2x − 1)(9 − x²)) is a worked example of Hall and Knight,
   * Higher Algebra, 1887, ch XXIII (from memory); the other values were worked out by hand.
   */
  @ParameterizedTest(name = "{1} for {0}")
  @CsvSource(
      delimiter = ';',
      value = {
        "(2x-1)(9-x^2); A+B+C; (23x-11x^2)/((2x-1)(9-x^2)); 11/2",
        "(2x-1)(9-x^2); ABC; (23x-11x^2)/((2x-1)(9-x^2)); 2",
        "x^3-22x^2+80x-67; 1/A+1/B+1/C; 1/(x^3-22x^2+80x-67); 244",
        "x^3-6x^2+5x-1; 1/A+1/B+1/C; 1/P(x); 21",
        // With a rational root; the sum of 3r^2 + 10r - 3 over the roots.
        "x^3+5x^2-3x-3; 1/A+1/B+1/C; 1/P(x); 34",
        "x^3-6x^2+5x-1; A+B+C; 1/P(x); 0",
        "2x^3-3x+7; A+B+C; (x^2+1)/P(x); 1/2",
        "x^3-2x-5; A r + B s + C t; x/P(x); 1",
      })
  void expressionsInTheNumeratorsComeOut(
      String polynomial, String ask, String fraction, String value) {
    String condition = fraction + " = A/(x-r)+B/(x-s)+C/(x-t)";
    assertThat(Stated.text(polynomial, ask + " if " + condition)).isEqualTo(value);
  }

  @Test
  void itIsSaidWhyTheExcludedValueMayBePutIn() {
    Solution solution =
        Stated.solution("x^3-6x^2+5x-1", "1/A+1/B+1/C if 1/P(x) = A/(x-r)+B/(x-s)+C/(x-t)");
    assertThat(solution.routes()).isNotEmpty();
    assertThat(solution.routes().get(0).steps().get(0).reason())
        .contains("identity of polynomials", "although that was excluded");
    assertThat(Stated.lines(solution, solution.routes().get(0).route()))
        .contains("A = 1/P'(r)", "B = 1/P'(s)");
    assertThat(solution.statement()).contains("which are distinct");
  }

  @Test
  void whatIsNoSuchDecompositionIsRefused() {
    String form = " = A/(x-r)+B/(x-s)+C/(x-t)";
    assertThat(Stated.refusal("(x-1)^2(x+3)", "A+B+C if 1/P(x)" + form)).contains("repeated");
    assertThat(Stated.refusal("x^3-2", "A+B+C if x^3/P(x)" + form)).contains("divide first");
    assertThat(Stated.refusal("x^3-2", "A+B+C if 1/(x^3-3)" + form)).contains("not stand");
    assertThat(Stated.refusal("x^4-2", "A+B+C if 1/P(x)" + form)).contains("3 fractions and 4");
  }

  @Test
  void theNumeratorsAddUpToTheQuotientOfTheLeads() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int trial = 0; trial < 6; trial++) {
      int lead = random.nextInt(1, 5);
      int top = random.nextInt(1, 9);
      String polynomial = "%dx^3 + (%d)x + 7".formatted(lead, random.nextInt(1, 9));
      String ask = "A+B+C if (%dx^2+1)/P(x) = A/(x-r)+B/(x-s)+C/(x-t)".formatted(top);
      assertThat(Stated.text(polynomial, ask))
          .as("seed %d: %s ; %s", SEED, polynomial, ask)
          .isEqualTo(Rational.of(top, lead).toString());
    }
  }
}
