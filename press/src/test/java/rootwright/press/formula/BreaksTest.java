package rootwright.press.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.List;
import org.junit.jupiter.api.Test;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PlainWriter;
import rootwright.press.Samples;

class BreaksTest {

  private static List<String> pieces(String formula, int upTo) {
    return pieces(Samples.f(formula), upTo);
  }

  private static List<String> pieces(Formula formula, int upTo) {
    return Breaks.pieces(formula, part -> PlainWriter.write(part).strip().length() <= upTo).stream()
        .map(part -> PlainWriter.write(part).strip())
        .toList();
  }

  @Test
  void aFormulaThatFitsIsOnePiece() {
    assertThat(pieces("x^3 - 2*x + 1 = 0", 40)).containsExactly("x^3 - 2*x + 1 = 0");
  }

  @Test
  void relationsAreBrokenBeforeTerms() {
    assertThat(pieces("1/r + 1/s + 1/t = e_2/e_3 = 5/7", 20))
        .containsExactly("1/r + 1/s + 1/t", "= e_2/e_3", "= 5/7");
  }

  @Test
  void aSignBeginsTheLineOfItsTerm() {
    assertThat(pieces("x^4 - 3*x^3 + 2*x^2 - 7", 8))
        .containsExactly("x^4", "- 3*x^3", "+ 2*x^2", "- 7");
  }

  @Test
  void equalsZeroStaysWithTheLastTerm() {
    assertThat(pieces("x^4 - 3*x^3 + 2*x^2 - 7 = 0", 9))
        .containsExactly("x^4", "- 3*x^3", "+ 2*x^2", "- 7 = 0");
  }

  @Test
  void theRelationSignStaysWithTheFirstTermOfItsSide() {
    assertThat(pieces("S_5 = 2*S_4 - 3*S_3 + 5*S_2", 8))
        .containsExactly("S_5", "= 2*S_4", "- 3*S_3", "+ 5*S_2");
  }

  @Test
  void aLongNumberIsBrokenBetweenDigitsAndLosesNone() {
    BigInteger large = BigInteger.valueOf(7).pow(200);
    List<String> pieces = pieces(Formula.number(large), 30);
    assertThat(pieces).hasSizeGreaterThan(5);
    assertThat(String.join("", pieces)).isEqualTo(large.toString());
  }

  @Test
  void aRowOfWordsIsBrokenAfterBlanksAndLosesNone() {
    List<Formula> pieces =
        Breaks.pieces(
            new Formula.Words("3, 0, 2, 3, 2 and so on"),
            part -> ((Formula.Words) part).text().length() <= 6);
    assertThat(pieces).hasSize(8).allMatch(piece -> ((Formula.Words) piece).text().length() <= 4);
    assertThat(pieces.stream().map(piece -> ((Formula.Words) piece).text()))
        .containsExactly("3, ", "0, ", "2, ", "3, ", "2 ", "and ", "so ", "on");
  }

  @Test
  void nothingIsLostOrDoubledWhateverTheWidth() {
    String text = "(r + s)*(s + t)*(t + r) - 2*r*s*t + r^2*(s - t) = e_1*e_2 - e_3 + 12";
    String whole = PlainWriter.write(Samples.f(text)).replace(" ", "");
    for (int upTo = 1; upTo < 60; upTo++) {
      String joined = String.join("", pieces(text, upTo)).replace(" ", "");
      assertThat(joined.replace("*", "")).as("up to %d", upTo).isEqualTo(whole.replace("*", ""));
    }
  }

  @Test
  void aPieceAfterASignAsksForRoomBeforeIt() {
    List<Formula> pieces =
        Breaks.pieces(
            Samples.f("x^2 - 3*x = 7*x + 5"), part -> PlainWriter.write(part).strip().length() < 7);
    assertThat(pieces.stream().map(Breaks::leadingRoom)).containsExactly(0, 4, 5, 4);
  }
}
