package rootwright.working.kind;

import static org.assertj.core.api.Assertions.assertThat;

import cc.redberry.rings.bigint.BigInteger;
import cc.redberry.rings.poly.univar.UnivariatePolynomial;
import cc.redberry.rings.poly.univar.UnivariateResultants;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.solve.Solution;

class NewPolynomialsTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_204L);

  /** Printed answers; those from memory were worked out again. */
  @ParameterizedTest(name = "{1}: {2}")
  @CsvSource(
      delimiter = ';',
      value = {
        "Dickson, First Course in the Theory of Equations, 1922, sec 27 ex 11 (p 28);"
            + "x^3-(1/2)x^2-(1/3)x+1/4; 6r; x^3 - 3*x^2 - 12*x + 54",
        "Dickson 1922, sec 20 ex 12 (p 19); x^2-3x+2; r^3; x^2 - 9*x + 8",
        "Dickson 1922, sec 20 ex 13 i (p 19); x^2+4x+3; r^2/s; 3*x^2 + 28*x + 9",
        "Dickson 1922, sec 20 ex 13 iii (p 19); x^2-2x-3; r+1/s; 3*x^2 - 4*x - 4",
        "Dickson 1922, ch IX misc ex 6 (p 142); x^3+3x^2+2x-5; r s; x^3 - 2*x^2 - 15*x - 25",
        "Dickson 1922, ch IX misc ex 7 (p 142); x^3-4x^2+3x+7; 2/r; 7*x^3 + 6*x^2 - 16*x + 8",
        "Dickson 1922, sec 105 ex 9 (p 134); x^3+2x^2-3x+5; r s - 1/t;"
            + "5*x^3 + 18*x^2 + 72*x - 216",
        "Dickson 1922, sec 67 ex 14 (p 75); x^3+x^2+8x+6; r^2; x^3 + 15*x^2 + 52*x - 36",
        "Hall and Knight, Higher Algebra, 1887, XXXV.d 24 (from memory); x^3+3x^2+2; r^3;"
            + "x^3 + 33*x^2 + 12*x + 8",
        "Hall and Knight 1887, XXXV.d 27 (from memory); x^3+3x+2; (r+s)/t^2; 2*x^3 - 3*x^2 - 1",
        "Hall and Knight 1887, XXXV.d 22 (from memory); x^3-5x^2+6x-3; r+1;"
            + "x^3 - 8*x^2 + 19*x - 15",
        "Burnside and Panton, Theory of Equations, 1881, art 42 (from memory); x^3-4x^2+3x+7;"
            + "(r-s)^2; x^3 - 14*x^2 + 49*x + 1007",
        "Burnside and Panton 1881, ch IV (from memory); x^4+2x^3-3x^2+5x+7; r s;"
            + "x^6 + 3*x^5 + 3*x^4 - 95*x^3 + 21*x^2 + 147*x + 343",
        "common practice; x^3-2x^2-3x+5; r+1/r; 5*x^3 - 13*x^2 - 26*x + 65",
        "common practice; x^3-2x^2-3x+5; r+s; x^3 - 4*x^2 + x + 1",
      })
  void thePrintedPolynomialComesOutByARoute(
      String source, String polynomial, String map, String answer) {
    Solution solution = Worked.solution(polynomial, "polynomial with roots (" + map + ")");
    assertThat(Worked.text(solution.answer())).as(source).isEqualTo(answer);
    assertThat(solution.routes()).as("%s: %s", polynomial, map).isNotEmpty();
  }

  @Test
  void theOldRootIsEliminatedByLinearEquations() {
    Solution solution = Worked.solution("x^3 - 2x^2 - 3x + 5", "polynomial with roots (r + 1/r)");
    assertThat(Solved.lines(solution, "eliminate"))
        .contains("y*r = r^2 + 1", "y*r^2 = 2*r^2 + 4*r - 5")
        .anyMatch(line -> line.contains("= -y^3 + "));
  }

  @Test
  void solvingForTheOldRootComesBeforeADeterminant() {
    Solution solution = Worked.solution("x^3 - 4x^2 + 2x + 6", "polynomial with roots (r + 1)");
    assertThat(solution.routes().get(0).route()).isEqualTo("invert-map");
  }

  @Test
  void sumsOverPairsAreWrittenByPowerSums() {
    Solution solution =
        Worked.solution("x^4 + 2x^3 - 3x^2 + 5x + 7", "polynomial with roots (r + s)");
    assertThat(Solved.lines(solution, "sums-over-pairs"))
        .contains("sum(r + s) = 3*S_1 = -6", "sum((r + s)^2) = 2*S_2 + S_1^2 = 24");
  }

  @Test
  void imagesAgreeWithResultantsOfAnotherLibrary() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int trial = 0; trial < 10; trial++) {
      long a = random.nextInt(-5, 6);
      long b = random.nextInt(-5, 6);
      long c = random.nextInt(1, 6);
      String text = "x^3 + (%d)x^2 + (%d)x + (%d)".formatted(a, b, c);
      Answer answer = Worked.solution(text, "polynomial with roots (r^2 + r)").answer();
      Polynomial image = ((Answer.PolynomialIn) answer).polynomial();
      for (long y = -3; y <= 3; y++) {
        // Res_x(P(x), y − x² − x) = ∏ (y − f(r)) for a monic P.
        BigInteger resultant =
            UnivariateResultants.Resultant(
                UnivariatePolynomial.create(c, b, a, 1), UnivariatePolynomial.create(y, -1, -1));
        assertThat(image.monic().at(Rational.of(y)).numerator())
            .as("seed %d: %s at %d", SEED, text, y)
            .isEqualTo(new java.math.BigInteger(resultant.toString()));
      }
    }
  }
}
