package rootwright.working.division;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.letters.Lettered;
import rootwright.working.solve.Solution;

/** Remainders of polynomials, of high powers too. */
class RemainderOfPolynomialTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // Dickson, First Course in the Theory of Equations, 1922, section 14 exercise 1 and section
        // 15 exercise 1.
        "x^4-3x^2-x-6; remainder on division by x+3; 51",
        "x^3+3x^2-2x-5; remainder on division by x-2; 11",
        // ω³ = 1; 1 and −1 put in; (1 + (x − 1))⁵⁰ = 1 + 50(x − 1) + ….
        "; remainder when x^50 is divided by x^2+x+1; -x - 1",
        "; Find the remainder when x^20 + 3x^5 - 1 is divided by x^2-1.; 3*x",
        "x^50; remainder when it is divided by (x-1)^2; 50*x - 49",
      })
  void remaindersAreReducedByTheDivisor(String polynomial, String find, String answer)
      throws UnreadableException {
    Solution solution = Lettered.work(polynomial == null ? "" : polynomial, find);
    assertThat(Lettered.text(solution)).isEqualTo(answer);
    assertThat(solution.routes()).isNotEmpty();
  }

  @Test
  void theRootWithTheWrongSignIsASlip() throws UnreadableException {
    // 81 − 27 − 3 − 6 at 3.
    assertThat(Lettered.slips(Lettered.work("x^4-3x^2-x-6", "remainder on division by x+3")))
        .containsExactly("root-with-wrong-sign 45");
  }

  @Test
  void twoLettersAreRefused() {
    assertThatThrownBy(() -> Lettered.work("", "remainder when x^5 + a is divided by x^2 - x + 1"))
        .isInstanceOf(UnreadableException.class)
        .hasMessageContaining("one letter");
  }

  @Test
  void remaindersAreThoseOfLongDivision() throws UnreadableException {
    long seed = Long.getLong("rootwright.seed", 20_271L);
    SplittableRandom random = new SplittableRandom(seed);
    for (int sample = 0; sample < 8; sample++) {
      List<Rational> ascending = new ArrayList<>();
      StringBuilder text = new StringBuilder("x^7");
      for (int k = 0; k < 7; k++) {
        int c = random.nextInt(-5, 6);
        ascending.add(Rational.of(c));
        text.append(" + (%d)x^%d".formatted(c, k));
      }
      ascending.add(Rational.ONE);
      int p = random.nextInt(-4, 5);
      int q = random.nextInt(-4, 5);
      Polynomial divisor = Polynomial.ofDescending(1, p, q);
      Solution solution =
          Lettered.work(
              text.toString(), "remainder on division by x^2 + (%d)x + (%d)".formatted(p, q));
      assertThat(solution.answer())
          .as("%s by %s, seed %d", text, divisor, seed)
          .isEqualTo(
              new Answer.PolynomialIn(Polynomial.ofAscending(ascending).remainder(divisor), "x"));
    }
  }
}
