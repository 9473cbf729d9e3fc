package rootwright.working.interpolation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.working.Stated;
import rootwright.working.solve.Solution;

class PolynomialFromValuesTest {

  private static final String RECIPROCALS = "P(6) if P has degree 4, P(k) = 1/k for k = 1..5";

  /** Common practice; worked out by hand with the auxiliary polynomial or with differences. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      value = {
        RECIPROCALS + "; 1/3",
        "P(6) if P has degree 4, P(k) = 1/k for k = 1, 2, 3, 4, 5; 1/3",
        "P(6) if P is a monic quartic, P(k) = k^2+1 for k = 1..4; 157",
        "P(0) if P is a monic cubic, P(1) = 1, P(2) = 2, P(3) = 3; -6",
        "f(4) if f is a polynomial of degree 3, f(k) = 2^k for k = 0..3; 15",
        "P(3) if P is quadratic and P(0) = 1, P(1) = 3, P(2) = 7; 13",
      })
  void theValuesFixThePolynomial(String ask, String value) {
    assertThat(Stated.text("", ask)).isEqualTo(value);
  }

  @Test
  void theAuxiliaryPolynomialIsShownAndItsSlips() {
    Solution solution = Stated.solution("", RECIPROCALS);
    assertThat(Stated.routes(solution)).containsExactlyInAnyOrder("auxiliary", "lagrange");
    assertThat(Stated.lines(solution, "auxiliary"))
        .contains("Q(x) = x*P(x) - 1", "c = 1/120")
        .endsWith("P(6) = (1 + 1)/6 = 1/3");
    assertThat(Stated.slips(solution)).contains("pattern-continued 1/6", "factor-sign 0");
    assertThat(
            Stated.slips(
                Stated.solution("", "P(6) if P is a monic quartic, P(k) = k^2+1 for k = 1..4")))
        .contains("lowest-degree 37");
    assertThat(solution.statement())
        .isEqualTo(
            "Let P be a polynomial of degree 4 with P(k) = 1/k for k = 1, 2, 3, 4, 5. Find P(6).");
  }

  @Test
  void tooFewTooManyAndContradictoryValuesAreSaid() {
    Solution open = Stated.solution("", "P(6) if P has degree 4, P(k) = 1/k for k = 1..4");
    assertThat(open.answer().kind()).isEqualTo("none");
    assertThat(Stated.warnings(open)).singleElement().asString().startsWith("several-parameters");
    Solution more = Stated.solution("", "P(6) if P is monic quadratic, P(k) = k^2 for k = 1..4");
    assertThat(Stated.text(more.answer())).isEqualTo("36");
    assertThat(Stated.warnings(more)).singleElement().asString().startsWith("redundant");
    Solution wrong = Stated.solution("", "P(6) if P has degree 2, P(k) = k^3 for k = 1..4");
    assertThat(Stated.warnings(wrong)).singleElement().asString().startsWith("contradictory");
    Solution twice = Stated.solution("", "P(6) if P has degree 1, P(1) = 2, P(1) = 3");
    assertThat(Stated.warnings(twice)).singleElement().asString().startsWith("contradictory");
  }

  @Test
  void whatCannotBeReadIsRefused() {
    assertThat(Stated.refusal("", "P(6) if P(1) = 2"))
        .contains("degree of the polynomial is missing");
    assertThat(Stated.refusal("", "P(1) if P has degree 1, P(1) = 2, P(2) = 3")).contains("given");
    assertThat(Stated.refusal("", "P(9) if P has degree 4, P(k) = 1/k for k = 0..4")).isNotBlank();
    assertThat(Stated.refusal("", "P(9) if P has degree 99, P(1) = 1")).contains("degree is 99");
    assertThat(Stated.refusal("", "P(9) if P is blue, P(1) = 1")).contains("blue");
  }
}
