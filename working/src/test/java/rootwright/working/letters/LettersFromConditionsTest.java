package rootwright.working.letters;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.solve.Solution;

/** Letters found from conditions on the roots: all of them, and nothing else. */
class LettersFromConditionsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // Worked out by hand and confirmed by resultants.
        "x^3 - 9x^2 + kx - 24; k if r = 2s; -34 or 26",
        "x^3 - 9x^2 + kx - 24; k if one root is twice another; -34 or 26",
        "x^3 - 12x^2 + kx - 28; k if roots in arithmetic progression; 39",
        "8x^3 - 42x^2 + kx - 27; k if the roots are in geometric progression; 63",
        "x^3 - 5x^2 - 9x + k; k if r = -s; 45",
        "x^2 - (m-1)x + (m+1); m if r^2 + s^2 = 4 and roots real; -1",
        "x^2 - (m-1)x + (m+1); m if r^2 + s^2 = 4; -1 or 5",
        "x^2 - 2mx + m + 6; m if r^2 + s^2 = 0 and roots real; no such value",
        "x^3 - 12x + k; k if a double root; -16 or 16",
        // Dickson, First Course in the Theory of Equations, 1922, section 20: the opposite roots of
        // exercise 5, the progressions of exercises 8 and 10, one coefficient made a letter.
        "4x^3 - 16x^2 - 9x + k; k if one root is the negative of another; 36",
        "x^3 - 14x^2 + kx + 216; k if roots in geometric progression; -84",
        "x^4 - 2x^3 - 21x^2 + kx + 40; k if roots in arithmetic progression; 22",
        // Dickson 1922, section 21 exercise 4: root 1 + √−5 of a real cubic.
        "x^3 - 6x^2 + 14x + d; d if 1 + sqrt(-5) is a root; -24",
        // Hall and Knight, Higher Algebra, 1887, Examples XXXV.a 9, 10 and XXXV.d 8 (numbers from
        // memory), one coefficient made a letter.
        "2x^3 - x^2 - 22x + k; k if 3r = 4s and k integer; -24",
        "24x^3 + 46x^2 + 9x + k; k if one root is double another and k integer; -9",
        "3x^3 - 22x^2 + 48x + k; k if roots in harmonic progression and roots real; -32",
        // Hall and Knight 1887, Examples XXXV.a 16 (number from memory).
        "27x^4 - 195x^3 + 494x^2 - 520x + k; k if roots in geometric progression; 192",
        // Burnside and Panton, The Theory of Equations, art. 24 (from memory).
        "x^3 - 5x^2 - 16x + k; k if r + s = 0; 80",
        "x^3 - 9x^2 + 14x + k; k if one root is 3/2 times another and k integer; 24",
      })
  void everySolutionIsFound(String polynomial, String find, String answer) throws Exception {
    assertThat(Lettered.answer(polynomial, find)).isEqualTo(answer);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // Powers of x² − 3x + 1 = 0 brought down by hand: x⁶ = 144x − 55.
        "x^6 + αx + β; α, β if x^2 - 3x + 1 divides; alpha = -144, beta = 55",
        // Dickson, First Course in the Theory of Equations, 1922, section 21, exercises 4 and 10.
        "x^3 - 6x^2 + cx + d; c, d if 1 + sqrt(-5) is a root; c = 14, d = -24",
        "x^4 - 2x^3 + ax^2 + bx + 2; a, b if 2 - sqrt(3) is a root; a = -5, b = -6",
        // Hall and Knight, Higher Algebra, 1887, Examples XXXV.b 4 (number from memory): a root i.
        "x^4 + 4x^3 + ax^2 + bx + 5; a, b if i is a root; a = 6, b = 4",
        // (x − 1)²(x + 2), and (x − 1)(x + 1/2)².
        "x^3 + ax + b; a, b if 1 is a root and a double root;"
            + " a = -3, b = 2 or a = -3/4, b = -1/4",
        "x^2 + ax + b; a, b if 2 is a root and 3 is a root; a = -5, b = 6",
      })
  void severalLettersAreFoundTogether(String polynomial, String find, String answer)
      throws Exception {
    assertThat(Lettered.answer(polynomial, find)).isEqualTo(answer);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // Dickson 1922, section 20 exercise 4, section 105 exercise 8, and p 153 exercise 2.
        "x^3 + px^2 + qx + r; condition if one root is the negative of another; p*q - r = 0",
        "x^3 + px^2 + qx + r; condition if roots in harmonic progression;"
            + " 9*p*q*r - 2*q^3 - 27*r^2 = 0",
        "x^4 + px^3 + qx^2 + rx + s; condition if one root is the negative of another;"
            + " p^2*s - p*q*r + r^2 = 0",
      })
  void theConditionBetweenLettersIsThePublishedOne(String polynomial, String find, String answer)
      throws Exception {
    assertThat(Lettered.answer(polynomial, find)).isEqualTo(answer);
  }

  @Test
  void integerRootsBesideAnEquationThrowOutWhatDoesNotFit() throws UnreadableException {
    // For k = 26 the roots are 2, 4, 3; for k = −34 they are −1, −2, 12.
    assertThat(Lettered.answer("x^3 - 9x^2 + kx - 24", "k if r = 2s and roots positive integers"))
        .isEqualTo("26");
    assertThat(Lettered.answer("x^3 - 9x^2 + kx - 24", "k if r = 2s and roots integers"))
        .isEqualTo("-34 or 26");
  }

  @Test
  void aConditionOfTooHighADegreeIsRefused() {
    assertThatThrownBy(() -> Lettered.work("x^3 + 9x^2 + kx + 1", "k if r^40 = s"))
        .isInstanceOf(UnreadableException.class)
        .hasMessageContaining("degree above 60");
  }

  @Test
  void valuesWithoutSquareRootsAreFoundToo() throws UnreadableException {
    Solution solution = Lettered.work("x^3 + kx + 1", "k if r = 2s");
    // k³ = −343/36 by the roots 2s, s, −3s with 6s³ = 1.
    assertThat(Lettered.text(solution)).isEqualTo("root(36*x^3 + 343, 1)");
    assertThat(Lettered.codes(solution)).contains("domain-open");
  }

  @Test
  void twoConditionsHoldForOneNamingTogether() throws UnreadableException {
    // Roots 2s, s, 3s: e₁ = 6s = −1, and 6s³ = −1 does not fit.
    assertThat(Lettered.answer("x^3 + x^2 + kx + 1", "k if r = 2s and t = 3s"))
        .isEqualTo("no such value");
    assertThat(Lettered.answer("x^3 - 6x^2 + kx - 6", "k if r = 2s and t = 3s")).isEqualTo("11");
  }

  @Test
  void valuesAtWhichTheRootsAreNotRealAreNamedAndThrownOut() throws UnreadableException {
    Solution solution = Lettered.work("x^2 - (m-1)x + (m+1)", "m if r^2 + s^2 = 4 and roots real");
    assertThat(Lettered.codes(solution)).containsExactly("extraneous");
    assertThat(solution.warnings().get(0).text()).contains("m = 5").contains("no root is real");
    assertThat(Lettered.slips(solution)).contains("existence-unchecked -1, 5");
  }

  @Test
  void whereNoRealValueIsLeftTheAnswerIsNoSuchValue() throws UnreadableException {
    Solution solution =
        Lettered.work("x^2 - 2mx + m + 6", "m if r^2 + s^2 = 0 and the roots are real");
    assertThat(Lettered.text(solution)).isEqualTo("no such value");
    assertThat(Lettered.codes(solution)).contains("no-parameter");
    assertThat(Lettered.slips(solution)).contains("existence-unchecked -3/2, 2");
  }

  @Test
  void twoValuesThatRemainAreSaidAndEachAloneIsASlip() throws UnreadableException {
    Solution solution = Lettered.work("x^3 - 9x^2 + kx - 24", "k if r = 2s");
    assertThat(Lettered.codes(solution)).containsExactly("several-parameters");
    assertThat(Lettered.slips(solution))
        .contains("second-solution-lost -34", "second-solution-lost 26");
    assertThat(solution.routes())
        .extracting(working -> working.route())
        .contains("condition-in-letter", "name-the-roots");
  }

  @Test
  void aValueAtWhichTheLeadVanishesIsThrownOut() throws UnreadableException {
    Solution solution = Lettered.work("(m-3)x^2 - 2mx + m + 2", "m if (m-3) r s = 5");
    assertThat(Lettered.text(solution)).isEqualTo("no such value");
    assertThat(Lettered.codes(solution)).contains("lead-zero", "no-parameter");
  }

  @Test
  void anExpressionUnderAConditionHasAValueForEachLetterLeft() throws UnreadableException {
    assertThat(Lettered.answer("x^3 - 9x^2 + kx - 24", "Σ r^2 if r = 2s")).isEqualTo("29 or 149");
  }

  @Test
  void theStatementSaysTheDomainAndWhatIsMeantByTheNames() throws UnreadableException {
    assertThat(Lettered.work("x^3 - 9x^2 + kx - 24", "k if r = 2s").statement())
        .isEqualTo(
            "Let r, s, t be the roots of x³ − 9x² + kx − 24 = 0, complex roots counted with"
                + " multiplicity, where k is a real number. Find all values of k for which r = 2s"
                + " for some naming of the roots.");
  }

  @Test
  void aConditionThatCannotBeReadIsRefusedWithItsPlace() {
    assertThatThrownBy(() -> Lettered.work("x^2 + kx + 1", "k if the moon is full"))
        .isInstanceOf(UnreadableException.class)
        .hasMessageContaining("moon");
    assertThatThrownBy(() -> Lettered.work("x^2 + kx + 1", "k"))
        .isInstanceOf(UnreadableException.class)
        .hasMessageContaining("Nothing is given");
  }
}
