package rootwright.press;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rootwright.press.document.Block;
import rootwright.press.document.Document;
import rootwright.press.document.Response;
import rootwright.press.document.Scoring;
import rootwright.press.output.Output;

/** Whatever is handed to students is searched for what only the coach may know. */
class StudentFilesHoldNoKeyTest {

  /** Answers of the open items and words of the key; none of them is in a statement. */
  private static final Pattern SECRETS =
      Pattern.compile(
          "(?<!\\d)(109|26|11/3)(?!\\d)|frac\\{11\\}\\{3\\}" + "|Key|Also accepted|slip|forgotten");

  @Test
  void aPaperForStudentsWithAKeyCannotBeMade() {
    Document sheet = Samples.worksheet();
    Block.Item keyed =
        new Block.Item(
            1,
            Optional.empty(),
            List.of(),
            new Response.Work(0),
            Optional.of(new Scoring.ByText("26", List.of())));
    Block framed = new Block.Frame(List.of(), List.of(keyed));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new Document(
                    sheet.title(),
                    sheet.language(),
                    sheet.audience(),
                    sheet.layout(),
                    sheet.identity(),
                    List.of(framed)))
        .withMessageContaining("item 1");
  }

  @Test
  void noOutputOfAWorksheetHoldsAnAnswer() throws IOException {
    for (Output output : Printed.OUTPUTS.all()) {
      for (String text : FileTexts.of(output.name(), Samples.worksheet())) {
        String bare = text.replaceAll("(?s)<style>.*?</style>", "");
        assertThat(bare).as(output.name()).doesNotContainPattern(SECRETS);
      }
    }
  }

  @Test
  void theSearchFindsTheAnswersOfAKey() throws IOException {
    for (Output output : Printed.OUTPUTS.all()) {
      assertThat(String.join("\n", FileTexts.of(output.name(), Samples.key())))
          .as(output.name())
          .contains("109");
    }
  }
}
