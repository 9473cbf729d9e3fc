package rootwright.press.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rootwright.composing.option.BalancedChoices;
import rootwright.composing.option.Choices;
import rootwright.press.PaperSamples;
import rootwright.press.Printed;
import rootwright.press.deliverable.Deliverables;
import rootwright.press.document.Layout;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Solution;

/** What the composer knows of a problem gets onto the paper. */
class ComposedItemsTest {

  private static final List<Statement> STATEMENTS =
      List.of(
          Statement.of("5x^3 - 10x^2 + x - 4", "1/(r-3) + 1/(s-3) + 1/(t-3)"),
          Statement.of("2x^3 - 6x^2 + x + 5", "r^2 + s^2 + t^2"),
          Statement.of("4x^3 - 8x^2 + 3x + 6", "r^2 + s^2 + t^2"),
          Statement.of("x^3 - 2x^2 + 3x - 5", "r^3 + s^3 + t^3"));

  private static Paper paper() throws Exception {
    List<Solution> solutions = new ArrayList<>();
    for (Statement statement : STATEMENTS) {
      solutions.add(PaperSamples.work(statement));
    }
    List<Choices> choices = BalancedChoices.of(solutions, 4);
    List<PaperItem> items = new ArrayList<>();
    for (int k = 0; k < STATEMENTS.size(); k++) {
      items.add(
          PaperItem.worked(STATEMENTS.get(k), solutions.get(k), Form.Choice.of(choices.get(k)), 5));
    }
    return Paper.draft(PaperSamples.content(List.of(new Version("", items))))
        .checked(PaperSamples::work)
        .frozen();
  }

  @Test
  void balancedChoicesHintsAndLevelsStandThePaperChecks() throws Exception {
    Paper paper = paper();
    assertThat(paper.content().versions().get(0).items())
        .allSatisfy(item -> assertThat(item.level()).isPresent())
        .allSatisfy(item -> assertThat(item.hints()).isNotEmpty());
    String key =
        Printed.text(
            "text", Deliverables.named("key").orElseThrow().document(paper, "", Layout.USUAL));
    assertThat(key).contains("−19/11").containsPattern("1 +[A-D] +−19/11");
  }

  @Test
  void hintsOfTheComposerDoNotGiveTheAnswerAway() throws Exception {
    String hints =
        Printed.text(
            "text", Deliverables.named("hints").orElseThrow().document(paper(), "", Layout.USUAL));
    assertThat(hints).contains("Item 1").contains(" 1. ").doesNotContain("19/11");
  }
}
