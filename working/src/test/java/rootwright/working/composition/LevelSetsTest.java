package rootwright.working.composition;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.Stated;
import rootwright.working.solve.Solution;

class LevelSetsTest {

  /** Worked out by hand: n·e1, and (P(P(0)) − c) over the lead of P(P(x)). */
  @ParameterizedTest(name = "{1} for {0}")
  @CsvSource(
      delimiter = ';',
      value = {
        "x^3-6x^2+2x+9; sum of the roots of P(P(x)) = 0; 18",
        "x^2-4x+1; sum of the roots of P(P(x)) = 0; 8",
        "x^2-4x+1; find the sum of all roots of f(f(x)) = 5.; 8",
        "2x^2-3x+7; sum of the solutions of P(P(x)) = -1/2; 3",
        "x^2-4x+1; product of the roots of P(P(x)) = 0; -2",
        "x^2-4x+1; product of the roots of P(P(x)) = 3; -5",
        "2x^2-3x+1; product of the roots of P(P(x)) = 4; -1/2",
        "x^3-2x; product of the roots of P(P(x)) = 5; 5",
      })
  void theRootsLieOnLevels(String polynomial, String ask, String value) {
    Solution solution = Stated.solution(polynomial, ask);
    assertThat(Stated.text(solution.answer())).isEqualTo(value);
    assertThat(Stated.routes(solution)).containsExactlyInAnyOrder("levels", "compose");
  }

  @Test
  void everyLevelHasTheSameSum() {
    Solution solution = Stated.solution("x^3-6x^2+2x+9", "sum of the roots of P(P(x)) = 0");
    assertThat(Stated.lines(solution, "levels"))
        .containsExactly("P(x) = r", "P(x) - r = x^3 - 6*x^2 + 2*x + 9 - r", "e_1 = 6", "3*6 = 18");
    assertThat(Stated.slips(solution)).contains("one-level 6", "sign-of-the-sum -18");
    assertThat(solution.statement())
        .isEqualTo(
            "Let P(x) = x³ − 6x² + 2x + 9. Find the sum of all 9 complex roots of P(P(x)) = 0,"
                + " counted with multiplicity.");
  }

  /** For P = x² − 2 and c = 2 by hand: P(P(x)) − 2 = x²(x² − 4). */
  @Test
  void repeatedRootsAreAnnounced() {
    Solution solution = Stated.solution("x^2-2x-1", "sum of the roots of P(P(x)) = 2");
    assertThat(Stated.text(solution.answer())).isEqualTo("4");
    Solution repeated = Stated.solution("x^2-2", "sum of the roots of P(P(x)) = 2");
    assertThat(Stated.warnings(repeated))
        .singleElement()
        .asString()
        .startsWith("repeated-root: Only 3 of the 4 roots");
    assertThat(Stated.warnings(solution)).isEmpty();
  }

  @Test
  void whatIsNotWorkedIsRefused() {
    assertThat(Stated.refusal("x^2-4x+1", "sum of the roots of P(P(x)) = x"))
        .contains("a number is expected");
    assertThat(Stated.refusal("3x+1", "sum of the roots of P(P(x)) = 0")).contains("degree 1");
    assertThat(Stated.refusal("x^9+x+1", "sum of the roots of P(P(x)) = 0")).contains("degree 9");
  }

  @Test
  void totalsAreThoseOfTheComposedPolynomial() {
    long seed = Long.getLong("rootwright.seed", 20_27L);
    SplittableRandom random = new SplittableRandom(seed);
    for (int round = 0; round < 12; round++) {
      int degree = 2 + random.nextInt(2);
      List<Rational> coefficients = new ArrayList<>();
      for (int k = 0; k < degree; k++) {
        coefficients.add(Rational.of(random.nextInt(-6, 7)));
      }
      coefficients.add(Rational.of(random.nextInt(1, 4)));
      Polynomial p = Polynomial.ofAscending(coefficients);
      int level = random.nextInt(-5, 6);
      String text = PlainWriter.write(PolynomialFormula.of(p, "x"));
      String whole =
          PlainWriter.write(
              PolynomialFormula.of(
                  p.compose(p).minus(Polynomial.constant(Rational.of(level))), "x"));
      String ask = " of the roots of P(P(x)) = " + level;
      String which = "seed %d: %s, %d".formatted(seed, text, level);
      assertThat(Stated.text(text, "sum" + ask)).as(which).isEqualTo(Stated.text(whole, "S_1"));
      assertThat(Stated.text(text, "product" + ask))
          .as(which)
          .isEqualTo(Stated.text(whole, "e_" + degree * degree));
    }
  }
}
