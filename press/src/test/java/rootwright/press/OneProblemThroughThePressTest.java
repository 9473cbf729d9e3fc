package rootwright.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rootwright.algebra.notation.PlainWriter;
import rootwright.composing.level.Level;
import rootwright.press.deliverable.Deliverables;
import rootwright.press.document.Document;
import rootwright.press.document.Layout;
import rootwright.press.document.Piece;
import rootwright.press.output.Output;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Paper;
import rootwright.press.paper.PaperItem;
import rootwright.press.paper.Version;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Solution;

/**
 * One problem through every document and format: the sum of 1/(r − 3) over the roots of 5x³ − 10x²
 * + x − 4. Worked by hand: P(3) = 135 − 90 + 3 − 4 = 44, P′(3) = 135 − 60 + 1 = 76, so the sum of
 * 1/(3 − r) is 76/44 = 19/11 and the answer −19/11.
 */
class OneProblemThroughThePressTest {

  private static final Statement STATEMENT =
      Statement.of("5x^3 - 10x^2 + x - 4", "1/(r-3) + 1/(s-3) + 1/(t-3)");

  private static Optional<Paper> made = Optional.empty();

  @BeforeAll
  static void makeThePaper() throws Exception {
    PaperItem item =
        PaperItem.worked(
            STATEMENT,
            PaperSamples.work(STATEMENT),
            PaperSamples.choice("-19/11", "-1", "-11/19", "-1/7", "19/11"),
            4);
    made =
        Optional.of(
            Paper.draft(PaperSamples.content(List.of(new Version("", List.of(item)))))
                .checked(PaperSamples::work)
                .frozen());
  }

  private static Document document(String name) throws BlockedException {
    return Deliverables.named(name).orElseThrow().document(made.orElseThrow(), "", Layout.USUAL);
  }

  private static String text(String name) throws BlockedException {
    return Printed.text("text", document(name)).replaceAll("\\s+", " ");
  }

  @Test
  void theSheetAsksWithItsDomainAndItsOptionsAscending() throws Exception {
    assertThat(text("sheet"))
        .contains("Let r, s, t be the roots of 5x³ − 10x² + x − 4 = 0.")
        .contains("Find 1/(r − 3) + 1/(s − 3) + 1/(t − 3).")
        .contains("Roots are complex numbers, counted with multiplicity")
        .contains("(A) −19/11 (B) −1 (C) −11/19 (D) −1/7 (E) 19/11");
  }

  @Test
  void theKeyHasLetterDecimalChecksAndTheSlipsBehindTheOptions() throws Exception {
    assertThat(text("key"))
        .contains("−19/11 (≈ −1.7273)")
        .contains("Two checks agree")
        .contains("routes agree")
        .contains("A −19/11 right")
        .contains("The sum of reciprocals is not the reciprocal of the sum");
  }

  @Test
  void colleaguesGetBothRoutesWithTheNumbersOfTheHandWorking() throws Exception {
    assertThat(text("routes"))
        .contains("P(3) = 135 − 90 + 3 − 4 = 44")
        .contains("P′(3) = 135 − 60 + 1 = 76")
        .contains("= 76/44 = 19/11")
        .contains("5y³ + 35y² + 76y + 44 = 0")
        .contains("44z³ + 76z² + 35z + 5 = 0");
  }

  @Test
  void forgettingTheLeadIsSilentInTheLogDerivative() throws Exception {
    Solution solution = PaperSamples.work(STATEMENT);
    List<String> values =
        solution.slips().stream().map(slip -> PlainWriter.write(slip.value().formula())).toList();
    assertThat(values).contains("19/11").doesNotContain("-19/11");
    assertThat(solution.second().agrees()).isTrue();
    assertThat(solution.second().digits().orElse(0)).isGreaterThanOrEqualTo(30);
  }

  @Test
  void fiveHintsHoldNeitherTheAnswerNorItsOpposite() throws Exception {
    List<List<Piece>> hints = made.orElseThrow().content().versions().get(0).items().get(0).hints();
    assertThat(hints).hasSize(5);
    for (Output output : Printed.OUTPUTS.all()) {
      if (output.holds(document("hints"))) {
        String all = String.join(" ", FileTexts.of(output.name(), document("hints")));
        assertThat(all).as(output.name()).doesNotContain("19/11").doesNotContain("frac{19}{11}");
      }
    }
  }

  @Test
  void marksGoLineByLine() throws Exception {
    assertThat(text("marks")).contains("M1").contains("A1").contains("marks for 4 points");
  }

  @Test
  void theLevelIsFourAndCalledEstimated() throws Exception {
    Level level = Level.of(PaperSamples.work(STATEMENT)).orElseThrow();
    assertThat(level.number()).isEqualTo(4);
    assertThat(level.words()).contains("estimated");
  }

  @Test
  void aReaderOfTheScreenHearsTheProblemAndTheAnswer() throws Exception {
    String sheet = String.join(" ", FileTexts.of("pdf", document("sheet")));
    assertThat(sheet).contains("plus one over, s minus three, plus one over, t minus three");
    assertThat(String.join(" ", FileTexts.of("pdf", document("solutions"))))
        .contains("minus nineteen elevenths");
  }

  @Test
  void everyFormatOfTheSolutionsHoldsTheAnswer() throws Exception {
    assertThat(Printed.text("latex", document("solutions"))).contains("\\frac{19}{11}");
    assertThat(Printed.text("html", document("solutions")))
        .contains("<mn>19</mn>")
        .contains("<mn>11</mn>");
    assertThat(Printed.textLayer(document("solutions"))).contains("19/11");
    assertThat(String.join(" ", FileTexts.of("qti", document("scored"))))
        .contains("<qti-correct-response>");
  }
}
