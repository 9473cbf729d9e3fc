package rootwright.desk.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rootwright.desk.paper.Orders.PAPERS;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rootwright.press.document.Layout;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.State;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;

class PapersTest {

  private static final PrintOrder TEXT =
      new PrintOrder(List.of("sheet", "key"), List.of("text"), Layout.USUAL);

  private static FiledPaper draft = unset();
  private static FiledPaper frozen = unset();

  private static FiledPaper unset() {
    return PaperFile.parse("paper: 1\ntitle: x\ndate: 2026-11-26\nversions: {A: []}\n");
  }

  @BeforeAll
  static void makeAPaper() throws Exception {
    draft = PAPERS.draft(Orders.one());
    frozen = PAPERS.frozen(PAPERS.checked(draft));
  }

  @Test
  void aPaperGoesFromDraftToCheckedToFrozenToPrinted(@TempDir Path folder) throws Exception {
    PaperFile file = new PaperFile(folder.resolve("p.yaml"));
    assertThat(draft.state()).isEqualTo(State.DRAFT);
    assertThat(PAPERS.checked(draft).state()).isEqualTo(State.CHECKED);
    assertThat(frozen.state()).isEqualTo(State.FROZEN);
    assertThat(frozen.code()).matches("[0-9A-Z]{5}-[0-9A-Z]{5}");
    file.write(frozen);
    PAPERS.print(file, TEXT, folder, (done, all) -> {}, 2);
    assertThat(file.read().state()).isEqualTo(State.PRINTED);
    assertThat(folder.resolve(frozen.code() + "-sheet.txt")).exists();
  }

  @Test
  void whatWasFrozenIsReadBackUnderTheSameCode() throws Exception {
    FiledPaper read = PaperFile.parse(PaperFile.text(frozen));
    assertThat(read).isEqualTo(frozen);
    var paper = new PaperReading(s -> Orders.DESK.work(s, everything())).asFiled(read);
    paper.requireIntact();
    assertThat(PaperFiling.of(read, paper)).isEqualTo(frozen);
  }

  private static ClassProfile everything() {
    return ClassProfile.EVERYTHING;
  }

  @Test
  void anotherSeedGivesAnotherOrderButNeverTouchesAFrozenPaper() throws Exception {
    FiledPaper versions = PAPERS.draft(Orders.order(Orders.four(), 3, Arrangement.REORDERED));
    FiledPaper later = PAPERS.frozen(PAPERS.checked(PaperFile.parse(PaperFile.text(versions))));
    assertThat(later.versions()).isEqualTo(versions.versions());
    assertThat(later.code()).isEqualTo(PAPERS.frozen(PAPERS.checked(versions)).code());
  }

  private static FiledPaper edited(FiledPaper paper) {
    return paper.edited(
        "1",
        item ->
            ((FiledItem.Problem) item)
                .withStatement(Statement.of("x^3 - 6x^2 + 5x - 2", "Σ 1/r^2")));
  }

  @Test
  void anEditedStatementMakesItsKeyStaleAndBlocksUntilItIsReadAgain(@TempDir Path folder)
      throws Exception {
    FiledPaper edited = edited(PAPERS.checked(draft));
    assertThat(edited.state()).isEqualTo(State.DRAFT);
    assertThat(edited.stale()).containsExactly("1");
    assertThatThrownBy(() -> PAPERS.frozen(edited))
        .isInstanceOf(BlockedException.class)
        .hasMessageContaining("Item 1: the key is stale");
    PaperFile file = new PaperFile(folder.resolve("p.yaml"));
    file.write(edited);
    assertThatThrownBy(() -> PAPERS.print(file, TEXT, folder, (done, all) -> {}, 2))
        .isInstanceOf(BlockedException.class);
    assertThatThrownBy(() -> PAPERS.comparison(edited)).isInstanceOf(BlockedException.class);
    FiledPaper again = PAPERS.checked(edited);
    assertThat(again.stale()).isEmpty();
    // e = 6, 5, 2: (25 - 2*6*2)/4 = 1/4.
    assertThat(((FiledItem.Problem) again.items().get("1")).key()).isEqualTo("1/4");
  }

  /** The file says frozen, and somebody has changed a word in an editor. */
  @Test
  void aFileChangedAfterItWasFrozenIsNotPrinted(@TempDir Path folder) throws Exception {
    refusedToPrint(
        folder,
        PaperFile.text(frozen).replace("Sums over the roots", "Sums over all roots"),
        "was changed after it was frozen");
    refusedToPrint(
        folder,
        PaperFile.text(frozen).replace("given: \"x^3 - 6x^2", "given: \"x^3 - 7x^2"),
        "stale");
    refusedToPrint(
        folder,
        PaperFile.text(frozen).replace("key: \"13\"", "key: \"14\""),
        "the key in the file is 14, and the checks find 13");
    refusedToPrint(
        folder,
        PaperFile.text(frozen).replace("\"9\"", "\"11\""),
        "was changed after it was frozen");
  }

  private static void refusedToPrint(Path folder, String text, String because) throws Exception {
    assertThat(text).isNotEqualTo(PaperFile.text(frozen));
    Path path = folder.resolve("p.yaml");
    Files.writeString(path, text);
    assertThatThrownBy(() -> PAPERS.print(new PaperFile(path), TEXT, folder, (done, all) -> {}, 2))
        .isInstanceOf(BlockedException.class)
        .hasMessageContaining(because);
    assertThat(folder.resolve(frozen.code() + "-sheet.txt")).doesNotExist();
  }

  @Test
  void aDraftIsNeitherFrozenNorPrintedAndAFrozenPaperNotEdited(@TempDir Path folder)
      throws Exception {
    assertThatIllegalStateException()
        .isThrownBy(() -> PAPERS.frozen(draft))
        .withMessageContaining("check it");
    PaperFile file = new PaperFile(folder.resolve("p.yaml"));
    file.write(draft);
    assertThatIllegalStateException()
        .isThrownBy(() -> PAPERS.print(file, TEXT, folder, (done, all) -> {}, 2))
        .withMessageContaining("draft");
    assertThatIllegalStateException().isThrownBy(() -> edited(frozen));
    assertThatIllegalStateException().isThrownBy(() -> PAPERS.checked(frozen));
  }

  @Test
  void aCorrectionIsANewEditionInItsOwnFileWithAnErratum(@TempDir Path folder) throws Exception {
    PaperFile first = new PaperFile(folder.resolve("p.yaml"));
    PaperFile second = new PaperFile(folder.resolve("p-2.yaml"));
    first.write(frozen);
    String before = Files.readString(first.path());
    FiledPaper next =
        PAPERS.correct(first, second, Orders.DAY.plusDays(1), "The constant was misprinted.");
    second.write(PAPERS.frozen(PAPERS.checked(edited(next))));
    FiledPaper later = second.read();
    assertThat(later.edition()).isEqualTo(2);
    assertThat(later.code()).isNotEqualTo(frozen.code());
    PAPERS.print(
        second,
        new PrintOrder(List.of("erratum", "notice"), List.of("text"), Layout.USUAL),
        folder,
        (done, all) -> {},
        2);
    assertThat(Files.readString(first.path())).isEqualTo(before);
    String erratum =
        Files.readString(folder.resolve(later.code() + "-erratum.txt")).replaceAll("\\s+", " ");
    assertThat(erratum)
        .contains("corrects edition 1 (" + frozen.code() + ")", "The constant was misprinted.")
        .contains("1/4", "13");
    String notice = Files.readString(folder.resolve(later.code() + "-notice.txt"));
    assertThat(notice).contains("5x − 2", "5x − 1").doesNotContain("1/4").doesNotContain("Key");
  }

  @Test
  void aRunThatWasStoppedGoesOnAndLeavesWhatIsThere(@TempDir Path folder) throws Exception {
    PaperFile file = new PaperFile(folder.resolve("p.yaml"));
    file.write(frozen);
    Path sheet = folder.resolve(frozen.code() + "-sheet.txt");
    Files.writeString(sheet, "from the first run");
    PAPERS.print(file, TEXT, folder, (done, all) -> {}, 2);
    assertThat(Files.readString(sheet)).isEqualTo("from the first run");
    assertThat(folder.resolve(frozen.code() + "-key.txt")).exists();
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all.filter(path -> path.toString().endsWith(".part"))).isEmpty();
    }
  }

  @Test
  void everyFormOfItemStandsOnTheSheetWithItsRule(@TempDir Path folder) throws Exception {
    PaperFile file = new PaperFile(folder.resolve("p.yaml"));
    file.write(frozen);
    PAPERS.print(file, TEXT, folder, (done, all) -> {}, 2);
    String sheet =
        Files.readString(folder.resolve(frozen.code() + "-sheet.txt")).replaceAll("\\s+", " ");
    assertThat(sheet)
        .contains("26 November 2026 · 4 items")
        .contains("m/n in lowest terms, with n positive. Write down m + n.")
        .contains("Prove that P(x) = 0 has a real solution.")
        .contains("Roots are complex numbers, counted with multiplicity");
    assertThat(Files.readString(folder.resolve(frozen.code() + "-key.txt"))).contains("31");
  }
}
