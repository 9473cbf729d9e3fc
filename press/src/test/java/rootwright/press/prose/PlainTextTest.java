package rootwright.press.prose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.press.document.Piece;

class PlainTextTest {

  /** The line with its formulas between ⟦ and ⟧. */
  private static String marked(String line) {
    return PlainText.kept(line).stream()
        .map(
            piece ->
                piece instanceof Piece.Mathematics mathematics
                    ? "⟦" + UnicodeWriter.write(mathematics.formula()) + "⟧"
                    : ((Piece.Words) piece).text())
        .collect(Collectors.joining());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "minus the coefficient of x² over the lead | minus the coefficient of ⟦x²⟧ over the lead",
        "by P(r) = 0; lower the powers | by ⟦P(r) = 0⟧; lower the powers",
        "with a = 1, b = 0 | with ⟦a = 1⟧, ⟦b = 0⟧",
        "if a = b: then (k − 2)·b² = 1 | if ⟦a = b⟧: then ⟦(k − 2)b² = 1⟧",
        "the discriminant of x² − ux + 1 | the discriminant of ⟦x² − ux + 1⟧",
        "below: e_(n−1) over e_n. | below: ⟦e_(n − 1)⟧ over ⟦eₙ⟧.",
        "the k-th powers | the ⟦k⟧-th powers",
        "1 + rx + r²x² + … = 1/(1 − rx), added up | ⟦1 + rx + r²x² + … = 1/(1 − rx)⟧, added up",
        "all roots multiply to −11/3 | all roots multiply to ⟦−11/3⟧"
      })
  void formulasInALineAreFound(String line, String marked) {
    assertThat(marked(line)).isEqualTo(marked);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Every value must be put back: a root is no solution by itself.",
        "add up; the constant counts 4 times",
        "I see e-mail, a/b-testing and so on",
        "the sum of the 3-th powers",
        "e₁, e₂, … : two letters and three dots",
        "((unbalanced = (",
        ""
      })
  void nothingIsLostAndWordsStayWords(String line) {
    assertThat(marked(line).replaceAll("[⟦⟧]", "")).isEqualTo(line);
    assertThat(marked(line)).doesNotContain("⟦a⟧", "⟦I⟧", "⟦4⟧", "⟦3⟧", "⟦…⟧");
  }
}
