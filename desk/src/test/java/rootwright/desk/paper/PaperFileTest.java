package rootwright.desk.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rootwright.press.paper.State;
import rootwright.working.problem.Statement;

class PaperFileTest {

  private static FiledPaper paper(String title) {
    FiledItem item =
        new FiledItem.Problem(
            new Statement("x^2 - 6x + 4", "a/b + b/a", List.of("a", "b"), Optional.of("x")),
            AnswerForm.CHOICE,
            3,
            List.of("-2", "7", "27/4"),
            List.of("What is $a*b$?", "It's a \"square\": # is no comment"),
            "7",
            "x^2 - 6x + 4 ; a/b + b/a ; roots a, b ; unknown x",
            "-0.30");
    return new FiledPaper(
        title,
        "de-AT",
        "",
        Orders.DAY,
        2,
        State.FROZEN,
        "ABCDE-01234",
        Optional.of(new FiledPaper.Correction("XXXXX-YYYYY", "A sign: wrong.", "old.yaml")),
        Map.of("1", item),
        Map.of("", List.of("1")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"Sums", "no", "1e3", "- a: [b, {c", "x # y", "'\"", "Wurzeln – Übung ½", "null"})
  void whatIsWrittenIsReadBack(String title) {
    FiledPaper paper = paper(title);
    assertThat(PaperFile.parse(PaperFile.text(paper))).isEqualTo(paper);
  }

  @Test
  void theFileIsPlainTextThatNamesEverything() {
    String text = PaperFile.text(paper("Sums"));
    assertThat(text)
        .contains("given: \"x^2 - 6x + 4\"", "find: \"a/b + b/a\"", "key: \"7\"")
        .contains("state: \"frozen\"", "code: \"ABCDE-01234\"");
  }

  @Test
  void aFileThatIsNoPaperSaysWhatIsWrong() {
    refused("{", "not YAML");
    refused("title: x", "paper: 1");
    refused("paper: 1\ntitle: x", "“date”");
    refused("paper: 1\ntitle: x\ndate: tomorrow\n", "2026-11-26");
    refused("paper: 1\ntitle: x\ndate: 2026-11-26\n", "no version");
    refused("paper: 1\nanswer: 5\n", "“answer”");
    refused(
        "paper: 1\ntitle: x\ndate: 2026-11-26\nitems: {1: {given: x}}\nversions: {A: [1]}\n",
        "item 1 has no “find”");
    refused("paper: 1\ntitle: x\ndate: 2026-11-26\nversions: {A: [7]}\n", "“7”");
  }

  private static void refused(String text, String because) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PaperFile.parse(text))
        .withMessageContaining(because);
  }

  @Test
  void aFileIsReplacedAsAWhole(@TempDir Path folder) throws Exception {
    PaperFile file = new PaperFile(folder.resolve("deep/thursday.yaml"));
    file.write(paper("One"));
    file.write(paper("Two"));
    assertThat(file.read().title()).isEqualTo("Two");
    try (var all = Files.list(folder.resolve("deep"))) {
      assertThat(all).hasSize(1);
    }
  }
}
