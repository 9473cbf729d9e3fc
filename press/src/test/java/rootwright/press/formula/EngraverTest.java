package rootwright.press.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class EngraverTest {

  private static Drawing draw(String latex) {
    return Engraver.engrave(latex, Style.TEXT, 10);
  }

  /** Widths of Computer Modern at ten points, as in the font metrics (Knuth 1986). */
  @Test
  void lettersHaveTheWidthsOfComputerModern() {
    assertThat(draw("a").width()).isEqualTo(5.28589, within(0.001));
    assertThat(draw("x").width()).isEqualTo(5.71528, within(0.001));
    assertThat(draw("0").width()).isEqualTo(5.00002, within(0.001));
  }

  @Test
  void aLetterWithoutDescenderStandsOnTheBaseline() {
    assertThat(draw("H").depth()).isEqualTo(0, within(0.001));
    assertThat(draw("y").depth()).isGreaterThan(1);
  }

  @Test
  void signsBetweenTermsHaveRoomOnBothSides() {
    double tight = draw("a").width() + draw("b").width() + draw("+").width();
    assertThat(draw("a+b").width() - tight).isEqualTo(2 * 10 * 4 / 18.0, within(0.01));
    assertThat(draw("x-y").width()).isEqualTo(draw("x+y").width(), within(0.001));
  }

  @Test
  void aBracedSignDoesNotSpoilTheFormulasAfterIt() {
    double before = draw("x+y").width();
    String path = draw("x+y").path();
    draw("{+}x");
    assertThat(draw("x+y").width()).isEqualTo(before);
    assertThat(draw("x+y").path()).isEqualTo(path);
  }

  @Test
  void fractionsAreLargerOnALineOfTheirOwn() {
    assertThat(Engraver.engrave("\\frac{1}{2}", Style.DISPLAY, 10).height())
        .isGreaterThan(draw("\\frac{1}{2}").height() * 1.3);
  }

  /** As LaTeX sets it: no more than the width of both. */
  @Test
  void aFractionStandsCloseToItsSign() {
    assertThat(draw("-\\frac{19}{11}").width())
        .isEqualTo(draw("-").width() + draw("\\frac{19}{11}").width(), within(0.001));
    assertThat(draw("-\\frac{1}{\\frac{2}{3}}").width())
        .isEqualTo(draw("-").width() + draw("\\frac{1}{\\frac{2}{3}}").width(), within(0.001));
  }

  @Test
  void bracketsThatNeedNotGrowArePlain() {
    assertThat(Fences.snug("P\\left(x\\right) + \\left(r + \\left(s\\right)\\right)"))
        .isEqualTo("P(x) + (r + (s))");
    assertThat(Fences.snug("\\left(\\frac{1}{P\\left(3\\right)}\\right)^{2}"))
        .isEqualTo("\\left(\\frac{1}{P(3)}\\right)^{2}");
    assertThat(Fences.snug("\\left|\\left(x\\right)\\right|")).isEqualTo("\\left|(x)\\right|");
  }

  @Test
  void theSameFormulaGivesTheSamePath() {
    String formula = "\\sqrt[3]{\\frac{r^{2}+1}{s-t}}=\\left(\\frac{1}{2}\\right)^{3}";
    assertThat(draw(formula)).isEqualTo(draw(formula));
  }

  @Test
  void whatCannotBeSetIsRefusedWithItsText() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> draw("\\nosuchsign r"))
        .withMessageContaining("\\nosuchsign r");
  }
}
