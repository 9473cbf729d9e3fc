package rootwright.press.deliverable;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rootwright.press.PaperSamples;
import rootwright.press.Printed;
import rootwright.press.PrintedFile;
import rootwright.press.document.Audience;
import rootwright.press.document.Document;
import rootwright.press.document.Layout;
import rootwright.press.output.Output;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Paper;
import rootwright.press.paper.Version;

/** One paper of ten problems as everything that leaves the desk. */
class DeliverablesTest {

  private static final Paper PAPER = PaperSamples.frozen();

  private static Document document(String name) {
    try {
      return Deliverables.named(name).orElseThrow().document(PAPER, "", Layout.USUAL);
    } catch (BlockedException blocked) {
      throw new AssertionError(blocked);
    }
  }

  private static String text(String name) {
    return Printed.text("text", document(name));
  }

  @Test
  void everyFileOfAPaperHasItsCode() {
    for (Deliverable one : Deliverables.ALL) {
      assertThat(text(one.name())).as(one.name()).contains(PAPER.code());
      assertThat(one.fileName(PAPER, "")).startsWith(PAPER.code());
    }
  }

  @Test
  void everyDocumentPrintsInEveryFormatThatCanHoldIt() throws BlockedException {
    for (Deliverable one : Deliverables.ALL) {
      for (Output output : Printed.OUTPUTS.all()) {
        if (!output.name().equals("qti") || !document(one.name()).items().isEmpty()) {
          PrintedFile file = PrintedFile.of(PAPER, "", one, Layout.USUAL, output);
          assertThat(file.bytes()).as("%s as %s", one.name(), output.name()).isNotEmpty();
          assertThat(file.name()).endsWith("." + output.extension());
        }
      }
    }
  }

  /** Keys that occur in no statement, and words that only the coach reads. */
  @Test
  void whatStudentsGetTellsNoAnswer() {
    Pattern secrets =
        Pattern.compile("(?<![\\d/-])(109|31|26|14|27/4|11/3)(?!\\d)|Key|slip|lead-forgotten");
    for (Deliverable one : Deliverables.ALL) {
      if (one.audience() == Audience.STUDENT) {
        for (String format : List.of("text", "latex", "html")) {
          String printed =
              Printed.text(format, document(one.name()))
                  .replaceAll("(?s)<style>.*?</style>", "")
                  .replaceAll("\\d+mm|0\\.4pt|11pt|\\\\skip\\w+", "")
                  .replace(PAPER.code(), "");
          assertThat(printed).as("%s as %s", one.name(), format).doesNotContainPattern(secrets);
        }
      }
    }
  }

  @Test
  void theWorksheetHasRoomByTheLengthOfTheShortestRoute() {
    assertThat(text("sheet").replaceAll("\\s+", " "))
        .contains("Roots are complex numbers, counted with multiplicity")
        .contains("1. (4 points) Let r, s, t be the roots of 3x³ − 7x² + 5x + 11 = 0.")
        .contains("Write down m + n")
        .contains("(A) −19/11 (B) −1 (C) −11/19 (D) −1/7 (E) 19/11")
        .contains("Here Sₖ is the sum of the kth powers of the roots.")
        .contains("Find all possible values of r²s + s²t + t²r.");
  }

  @Test
  void theKeyHasAnswerDecimalLetterAcceptedFormsSlipsAndChecks() {
    assertThat(text("key"))
        .containsPattern("3 +A +−19/11 \\(≈ −1.7273\\)")
        .containsPattern("4 +31 +27/4 \\(= 6.75\\)")
        .contains("Accepted: 27/4; 6.75; 6 3/4, and what is equal.")
        .contains("−10 or 3")
        .contains("Two checks agree: the exact normal form; certified enclosures")
        .containsPattern("D +9 +The square of the sum has cross terms");
  }

  @Test
  void theKeyHasNoColumnForWhatIsPutDownWhereThatIsTheAnswerItself() throws BlockedException {
    Paper written =
        Paper.draft(
                PaperSamples.content(
                    List.of(new Version("", List.of(PaperSamples.written("x^2 - 5x + 3", "S_2"))))))
            .checked(PaperSamples::work)
            .frozen();
    Document key = Deliverables.named("key").orElseThrow().document(written, "", Layout.USUAL);
    assertThat(Printed.text("text", key)).contains("Exact answer").doesNotContain("Write or mark");
    assertThat(text("key")).contains("Write or mark");
  }

  @Test
  void theSolutionsEndInTheAnswersAndShowASecondWay() {
    assertThat(text("solutions"))
        .contains("Answer: −19/11 (≈ −1.7273).")
        .contains("P′(3) = 135 − 60 + 1 = 76")
        .contains("A second way:")
        .contains("opposite signs");
  }

  @Test
  void colleaguesGetEveryRouteAndWhyOthersFail() {
    assertThat(text("routes"))
        .contains("Routes that do not apply")
        .contains("Slips that show")
        .contains("Slips that do not show here");
  }

  @Test
  void theMarkingSchemeGoesLineByLine() {
    assertThat(text("marks"))
        .containsPattern("e₂ = rs \\+ rt \\+ st = 1/2 .* B1")
        .contains("M1 A1");
  }

  @Test
  void hintsAreNumberedAndStopBeforeTheAnswer() {
    assertThat(text("hints"))
        .contains("1. Which polynomial has the roots r − 3?")
        .doesNotContain("19/11");
  }

  @Test
  void theHandoutHasFactsSamplesSlipsAndSomethingToTry() {
    assertThat(text("handout")).contains("What goes wrong").contains("To try").contains("Answers");
  }

  @Test
  void theScoredSheetIsWhatATestingProgramGets() {
    var files = Printed.files(Printed.bytes("qti", document("scored")));
    assertThat(files.get("items/item-3.xml")).contains("choice-A").contains("−");
    assertThat(files.get("items/item-4.xml")).contains("<qti-value>31</qti-value>");
    assertThat(files.get("items/item-7.xml")).contains("map-key=\"-10 or 3\"");
    assertThat(files.get("items/item-10.xml")).contains("external-scored=\"human\"");
  }
}
