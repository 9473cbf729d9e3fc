package rootwright.working.surd;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.working.Stated;
import rootwright.working.solve.Solution;

class LeastPolynomialsTest {

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = ';',
      value = {
        "common practice; minimal polynomial of √3+√7; x^4 - 20*x^2 + 16",
        "common practice; polynomial with rational coefficients having 2+i and 1-√3;"
            + "x^4 - 6*x^3 + 11*x^2 - 2*x - 10",
        "Dickson, First Course in the Theory of Equations, 1922, sec 21 ex 3 (p 20);"
            + "polynomial with real coefficients having 1, 3+2i; x^3 - 7*x^2 + 19*x - 13",
        "Dickson 1922, sec 21 ex 4 (p 20); polynomial with roots 1+√(-5), 4;"
            + "x^3 - 6*x^2 + 14*x - 24",
        "Hall and Knight, Higher Algebra, 1887, XXXV.a 1 (from memory);"
            + "polynomial with integer coefficients having 2/3, 3/2, √3;"
            + "6*x^4 - 13*x^3 - 12*x^2 + 39*x - 18",
        "Hall and Knight 1887, XXXV.b 5 (from memory);"
            + "polynomial with rational coefficients having √3, 1-2i and -1;"
            + "x^5 - x^4 + 8*x^2 + -9*x - 15",
        "worked out by hand; the minimal polynomial of √2+√3+√5;"
            + "x^8 - 40*x^6 + 352*x^4 - 960*x^2 + 576",
      })
  void everyNumberBringsItsConjugates(String source, String ask, String polynomial) {
    assertThat(Stated.text("", ask)).as(source).isEqualTo(polynomial.replace("+ -", "- "));
  }

  @Test
  void twoSquareRootsAreSquaredAway() {
    Solution solution = Stated.solution("", "minimal polynomial of √3+√7");
    assertThat(Stated.lines(solution, "square"))
        .containsExactly(
            "A = sqrt(3) + sqrt(7)",
            "A^2 = 10 + 2*sqrt(21)",
            "(A^2 - 10)^2 = 84",
            "A^4 - 20*A^2 + 16 = 0");
    assertThat(Stated.slips(solution)).contains("cross-term-dropped x^2 - 10");
  }

  /** Dickson 1922, sec 18 ex 3 (p 17), and Hall and Knight 1887, XXXV.a 3 (from memory). */
  @Test
  void aRootThatIsListedTwiceIsADoubleRoot() {
    Solution solution = Stated.solution("", "polynomial with roots (3, 3, -3, -3)");
    assertThat(Stated.text("", "polynomial with roots (3, 3, -3, -3)"))
        .isEqualTo("x^4 - 18*x^2 + 81");
    assertThat(Stated.slips(solution)).contains("double-root-once x^2 - 9");
    assertThat(Stated.text("", "polynomial with roots (2, 2, -2, -2, 0, 5)"))
        .isEqualTo("x^6 - 5*x^5 - 8*x^4 + 40*x^3 + 16*x^2 - 80*x");
    assertThat(Stated.text("", "polynomial with roots (√3, -√3, √3)")).isEqualTo("x^4 - 6*x^2 + 9");
  }

  @Test
  void realCoefficientsDoNotForceTheOtherSquareRoot() {
    Solution solution = Stated.solution("", "polynomial with real coefficients having 1+√3");
    assertThat(solution.answer().kind()).isEqualTo("none");
    assertThat(Stated.warnings(solution)).anyMatch(text -> text.startsWith("domain-open"));
    assertThat(Stated.refusal("", "minimal polynomial of cbrt(2)")).contains("no number written");
  }
}
