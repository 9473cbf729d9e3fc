package rootwright.working.letters;

import static org.assertj.core.api.Assertions.assertThat;

import cc.redberry.rings.Rings;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.working.answer.Answer;
import rootwright.working.check.second.EnclosureCheck;
import rootwright.working.solve.Solution;
import rootwright.working.step.Claim;
import rootwright.working.step.Setting;

/** Expressions in the roots as functions of the letters in the coefficients. */
class FunctionsOfLettersTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "x^2 - 2mx + m + 6; r^2 + s^2; 4*m^2 - 2*m - 12",
        "(m-3)x^2 - 2mx + m + 2; Σ 1/(r-1); -6",
        "x^3 + p x^2 + q x + r; Σ 1/s; -q/r",
        "x^3 - 9x^2 + kx - 24; S_4; 2*k^2 - 324*k + 7425",
        "x^3 - 9x^2 + kx - 24; Π (2 - r); 2*k - 52",
        // Dickson, First Course in the Theory of Equations, 1922, section 115 exercise 5.
        "a x^3 + b x^2 + c x + d; discriminant;"
            + " -27*a^2*d^2 + 18*a*b*c*d - 4*a*c^3 - 4*b^3*d + b^2*c^2",
        // The reduced cubic, Cardano 1545.
        "x^3 + p x + q; discriminant; -4*p^3 - 27*q^2",
        "x^3 + p x + q; Σ r^2; -2*p",
      })
  void valuesAreGivenInLowestTerms(String polynomial, String find, String answer) throws Exception {
    Solution solution = Lettered.work(polynomial, find);
    assertThat(solution.answer()).isInstanceOf(Answer.FunctionOf.class);
    Formula found = ((Answer.FunctionOf) solution.answer()).formula();
    // Terms may stand in another order: what counts is that both are one function.
    var ring = Rings.MultivariateRing(6, Rings.Q);
    var coder = cc.redberry.rings.io.Coder.mkMultivariateCoder(ring, "a", "b", "c", "d", "p", "q");
    String text = Lettered.text(solution);
    if (!answer.contains("/") && polynomial.indexOf('m') < 0 && polynomial.indexOf('k') < 0) {
      assertThat(coder.parse(text).equals(coder.parse(answer))).as(text).isTrue();
    } else {
      assertThat(text).isEqualTo(answer);
    }
    assertThat(found).isNotNull();
  }

  @Test
  void theValueAgreesWithNumbersPutForTheLetters() throws Exception {
    long seed = Long.getLong("rootwright.seed", 20_261L);
    SplittableRandom random = new SplittableRandom(seed);
    for (String ask : new String[] {"Σ r^2 s", "S_5", "Σ 1/(r-2)", "Π (r+s)", "Σ r/s"}) {
      Solution general = Lettered.work("x^3 + a x^2 + b x + c", ask);
      Formula formula = ((Answer.FunctionOf) general.answer()).formula();
      for (int k = 0; k < 4; k++) {
        int a = random.nextInt(-5, 6);
        int b = random.nextInt(-5, 6);
        int c = random.nextInt(5, 11);
        Solution special = Lettered.work("x^3 + (%d)x^2 + (%d)x + (%d)".formatted(a, b, c), ask);
        Formula put =
            formula.rewrite(
                part ->
                    part.equals(Formula.name("a"))
                        ? Formula.number(a)
                        : part.equals(Formula.name("b"))
                            ? Formula.number(b)
                            : part.equals(Formula.name("c")) ? Formula.number(c) : part);
        if (special.answer() instanceof Answer.Exact exact) {
          Claim claim = Claim.equal(Setting.ofLetters(List.of()), put, exact.value().toFormula());
          assertThat(new EnclosureCheck().of(claim).isConfirmed())
              .as("%s at %d, %d, %d, seed %d", ask, a, b, c, seed)
              .isTrue();
        }
      }
    }
  }

  @Test
  void anExpressionThatIsNotSymmetricIsNoFunctionOfTheLetters() throws Exception {
    Solution solution = Lettered.work("x^3 + p x + q", "r^2 s + s^2 t + t^2 r");
    assertThat(solution.answer()).isInstanceOf(Answer.None.class);
    assertThat(Lettered.codes(solution)).contains("not-symmetric");
  }

  @Test
  void aLeadThatMayVanishIsSaidWithWhatHappensThere() throws Exception {
    Solution solution = Lettered.work("(m-3)x^2 - 2mx + m + 2", "r + s");
    assertThat(Lettered.codes(solution)).containsExactly("lead-zero");
    assertThat(solution.warnings().get(0).text()).contains("m = 3").contains("x = 5/6");
    assertThat(solution.conditions()).containsExactly("m − 3 ≠ 0");
    assertThat(FormulaReader.formula(Lettered.text(solution))).isNotNull();
  }
}
