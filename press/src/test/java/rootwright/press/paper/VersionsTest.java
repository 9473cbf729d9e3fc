package rootwright.press.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rootwright.press.PaperSamples;
import rootwright.press.Printed;
import rootwright.press.deliverable.Deliverables;
import rootwright.press.document.Layout;
import rootwright.working.problem.Statement;

class VersionsTest {

  private static Paper siblings(PaperItem... items) {
    return Paper.draft(PaperSamples.content(Versions.renumbered(List.of(List.of(items)))));
  }

  @Test
  void siblingsWithOtherKeysAndTheSameSlipsMakeVersions() throws BlockedException {
    Paper frozen = PaperSamples.threeVersions().checked(PaperSamples::work).frozen();
    String comparison =
        Printed.text(
            "text",
            Deliverables.named("compare").orElseThrow().document(frozen, "A", Layout.USUAL));
    assertThat(comparison).contains("13").contains("19").contains("17");
  }

  @Test
  void changingOneVersionAfterTheCheckBlocksPrinting() throws BlockedException {
    Paper checked = PaperSamples.threeVersions().checked(PaperSamples::work);
    Paper edited =
        checked.edited(
            content ->
                content.withVersions(
                    content.versions().stream()
                        .map(
                            version ->
                                version.mark().equals("B")
                                    ? version.withItem(0, retold(version.items().get(0)))
                                    : version)
                        .toList()));
    assertThatThrownBy(
            () -> Deliverables.named("sheet").orElseThrow().document(edited, "A", Layout.USUAL))
        .isInstanceOf(BlockedException.class)
        .hasMessage(
            "Version B, item 1: The key is stale: the statement has not been checked since it was"
                + " written.");
  }

  private static PaperItem retold(PaperItem item) {
    Task.Find find = (Task.Find) item.task();
    return item.withTask(
        find.withStatement(Statement.of("x^3 + 5x^2 - 3x - 2", find.statement().find())));
  }

  @Test
  void siblingsWithTheSameKeyAreRefused() {
    assertThatThrownBy(
            () ->
                siblings(
                        PaperSamples.written("x^3 - 5x + 1", "r + s + t"),
                        PaperSamples.written("x^3 - 7x + 1", "r + s + t"))
                    .checked(PaperSamples::work))
        .isInstanceOf(BlockedException.class)
        .hasMessageContaining("The key is the same as in version A.");
  }

  @Test
  void siblingsOfOtherLevelAreRefused() {
    PaperItem easy = levelled(PaperSamples.written("x^3 - 6x^2 + 5x - 1", "S_2"), "0.2");
    PaperItem hard = levelled(PaperSamples.written("x^3 - 8x^2 + 5x - 1", "S_2"), "0.6");
    assertThatThrownBy(() -> siblings(easy, hard).checked(PaperSamples::work))
        .isInstanceOf(BlockedException.class)
        .hasMessageContaining("level");
  }

  private static PaperItem levelled(PaperItem item, String level) {
    return new PaperItem(
        item.task(), item.points(), item.hints(), Optional.of(new BigDecimal(level)));
  }

  /**
   * Keys 8 (B) and 26 (C); in the second version 8 stands at B, where it is the key of the first.
   */
  @Test
  void anOptionAtTheLetterOfAnotherKeyIsRefused() {
    PaperItem first =
        PaperSamples.item(
            "2x^3 - 6x^2 + x + 5", "r^2 + s^2 + t^2", PaperSamples.choice("7", "8", "10"));
    PaperItem second =
        PaperSamples.item(
            "2x^3 - 10x^2 - x + 5", "r^2 + s^2 + t^2", PaperSamples.choice("7", "8", "26"));
    assertThatThrownBy(() -> siblings(first, second).checked(PaperSamples::work))
        .isInstanceOf(BlockedException.class)
        .hasMessageContaining("letter");
  }

  @Test
  void reorderedVersionsHoldTheSameItemsInOtherOrders() {
    List<PaperItem> items = PaperSamples.draft().content().versions().get(0).items();
    List<Version> versions = Versions.reordered(items, 4, 41);
    assertThat(versions.stream().map(Version::mark)).containsExactly("A", "B", "C", "D");
    assertThat(versions.get(0).items()).isEqualTo(items);
    assertThat(new HashSet<>(versions.stream().map(Version::items).toList())).hasSize(4);
    assertThat(versions)
        .allSatisfy(
            version -> assertThat(version.items()).containsExactlyInAnyOrderElementsOf(items));
    assertThat(Versions.reordered(items, 4, 41)).isEqualTo(versions);
  }
}
