package rootwright.press.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rootwright.press.PaperSamples;
import rootwright.press.Samples;
import rootwright.press.deliverable.Deliverables;
import rootwright.press.deliverable.Erratum;
import rootwright.press.document.Block;
import rootwright.press.document.Document;
import rootwright.press.document.Layout;
import rootwright.working.problem.Statement;

class PaperTest {

  private static Paper one(PaperItem... items) {
    return Paper.draft(PaperSamples.content(List.of(new Version("", List.of(items)))));
  }

  private static Content changed(Content content, int place, String polynomial) {
    Version version = content.versions().get(0);
    PaperItem item = version.items().get(place);
    Task.Find find = (Task.Find) item.task();
    Task other = find.withStatement(Statement.of(polynomial, find.statement().find()));
    return content.withVersions(List.of(version.withItem(place, item.withTask(other))));
  }

  @Test
  void aPaperGoesFromDraftToPrinted() throws BlockedException {
    Paper draft = PaperSamples.draft();
    assertThat(draft.state()).isEqualTo(State.DRAFT);
    Paper checked = draft.checked(PaperSamples::work);
    assertThat(checked.state()).isEqualTo(State.CHECKED);
    assertThat(checked.code()).isEmpty();
    Paper frozen = checked.frozen();
    assertThat(frozen.state()).isEqualTo(State.FROZEN);
    assertThat(frozen.code()).matches("[0-9A-HJKMNP-TV-Z]{5}-[0-9A-HJKMNP-TV-Z]{5}");
    assertThat(frozen.printed().state()).isEqualTo(State.PRINTED);
    assertThat(frozen.printed().code()).isEqualTo(frozen.code());
  }

  @Test
  void nothingIsPrintedBeforeTheKeysAreChecked() {
    assertThatThrownBy(
            () ->
                Deliverables.named("sheet")
                    .orElseThrow()
                    .document(PaperSamples.draft(), "", Layout.USUAL))
        .isInstanceOf(BlockedException.class)
        .hasMessageContaining("item 1: The key is stale");
  }

  @Test
  void changingAStatementMakesItsKeyStaleUntilItIsReadAgain() throws BlockedException {
    Paper checked = PaperSamples.draft().checked(PaperSamples::work);
    Paper edited = checked.edited(content -> changed(content, 4, "x^3 - 4x^2 + 2x + 7"));
    assertThat(edited.state()).isEqualTo(State.DRAFT);
    assertThatThrownBy(edited::requirePrintable)
        .isInstanceOf(BlockedException.class)
        .hasMessageContaining("item 5")
        .hasMessageNotContaining("item 4");
    Paper again = edited.checked(PaperSamples::work);
    again.requirePrintable();
    assertThat(again.frozen().code()).isNotEqualTo(checked.frozen().code());
  }

  @Test
  void aFrozenPaperIsNeverEdited() throws BlockedException {
    Paper frozen = PaperSamples.frozen();
    assertThatIllegalStateException()
        .isThrownBy(() -> frozen.edited(content -> content))
        .withMessageContaining(frozen.code());
    assertThatIllegalStateException().isThrownBy(() -> frozen.checked(PaperSamples::work));
  }

  @Test
  void aCorrectionIsANewEditionWithAnErratum() throws BlockedException {
    Paper frozen = PaperSamples.frozen();
    Paper second =
        frozen
            .nextEdition(
                Samples.DAY.plusDays(1), content -> changed(content, 4, "x^3 - 4x^2 + 2x + 7"))
            .checked(PaperSamples::work)
            .frozen();
    assertThat(second.edition()).isEqualTo(2);
    assertThat(second.code()).isNotEqualTo(frozen.code());
    Document erratum =
        Erratum.sheets(frozen, "The constant was misprinted.")
            .get(0)
            .document(second, "", Layout.USUAL);
    List<Block> tables = erratum.blocks().stream().filter(Block.Table.class::isInstance).toList();
    assertThat(tables).hasSize(1);
    assertThat(erratum.identity().paperCode()).isEqualTo(second.code());
  }

  @Test
  void theCodeIsTheSameForTheSameContentOnly() throws BlockedException {
    assertThat(PaperSamples.frozen().code()).isEqualTo(PaperSamples.frozen().code());
    Paper other =
        PaperSamples.draft()
            .edited(
                content ->
                    new Content(
                        content.title() + "!",
                        content.language(),
                        content.instruction(),
                        content.date(),
                        content.versions()))
            .checked(PaperSamples::work)
            .frozen();
    assertThat(other.code()).isNotEqualTo(PaperSamples.frozen().code());
  }

  @Test
  void anEmptyPaperIsNotFrozen() throws BlockedException {
    Paper checked = one().checked(PaperSamples::work);
    assertThatThrownBy(checked::frozen)
        .isInstanceOf(BlockedException.class)
        .hasMessageContaining("no item");
  }

  @Test
  void everyItemThatCannotStandIsNamed() {
    Paper paper =
        one(
            PaperSamples.written("x^3 - 3x^2 + x + 2", "1/(r-2) + 1/(s-2) + 1/(t-2)"),
            PaperSamples.written("x^3 - $", "r + s + t"),
            PaperSamples.item(
                "2x^3 - 6x^2 + x + 5", "r^2 + s^2 + t^2", PaperSamples.choice("7", "9", "10")),
            PaperSamples.item(
                "2x^3 - 6x^2 + x + 5", "r^2 + s^2 + t^2", PaperSamples.choice("9", "8", "10")),
            PaperSamples.item("x^3 - 2x^2 + 6x - 3", "r^2 + s^2 + t^2", new Form.WholeNumber()),
            PaperSamples.written("x^3 - 4x + 1", "r + s + t"));
    List<Complaint> complaints = new ArrayList<>();
    try {
      paper.checked(PaperSamples::work);
    } catch (BlockedException blocked) {
      complaints.addAll(blocked.complaints());
    }
    assertThat(complaints.stream().map(Complaint::item)).containsExactly(1, 2, 3, 4, 5);
    assertThat(complaints.get(0).text()).contains("no answer");
    assertThat(complaints.get(2).text()).contains("0 of the options are right");
    assertThat(complaints.get(3).text()).contains("ascending");
    assertThat(complaints.get(4).text()).contains("-8").contains("0 to 999");
  }
}
