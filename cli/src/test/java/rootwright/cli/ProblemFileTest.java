package rootwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A list of problems, one a line. */
class ProblemFileTest {

  private static final String GOOD = "x^3-4x+1 ; S_4";
  private static final String TWO_VALUES = "x^3-x^2-4x-1 ; r^2 s+s^2 t+t^2 r";
  private static final String BAD = "x^^3 ; S_2";

  @TempDir Path folder;

  private Shell work(String... lines) throws IOException {
    Path file = folder.resolve("problems.txt");
    Files.write(file, List.of(lines));
    return Shell.run("work", "--file", file.toString(), "--json");
  }

  @Test
  void oneObjectALineInOrderWithTheNumberOfTheLine() throws IOException {
    Shell shell = work("# powers", "", GOOD, "   ", "2x^3-6x^2+x+5 ; S_2");
    assertThat(shell.status()).isZero();
    assertThat(shell.err()).isEmpty();
    assertThat(shell.objects()).extracting(o -> o.path("line").asInt()).containsExactly(3, 5);
    assertThat(shell.objects())
        .extracting(o -> o.at("/answer/text").asText())
        .containsExactly("32", "8");
  }

  @Test
  void aListForAPaperIsWorkedAsItStands() throws IOException {
    Shell shell = work(GOOD + " ; choice ; 5", GOOD + " ; 3", GOOD + " ; S_5");
    assertThat(shell.status()).isEqualTo(2);
    assertThat(shell.objects().get(0).at("/answer/text").asText()).isEqualTo("32");
    assertThat(shell.objects().get(1).at("/answer/text").asText()).isEqualTo("32");
    JsonNode error = shell.objects().get(2).path("error");
    assertThat(error.path("code").asText()).isEqualTo("too-many-fields");
    assertThat(error.path("at").asInt()).isEqualTo(GOOD.length() + 3);
    assertThat(error.path("mend").asText()).isEqualTo(GOOD);
  }

  @Test
  void aBadLineIsNamedAndTheRestIsWorked() throws IOException {
    Shell shell = work(GOOD, BAD, "no ask here", GOOD);
    assertThat(shell.status()).isEqualTo(2);
    assertThat(shell.err()).contains("error: line 2: ", "error: line 3: ");
    List<JsonNode> objects = shell.objects();
    assertThat(objects).hasSize(4);
    assertThat(objects.get(0).at("/answer/text").asText()).isEqualTo("32");
    assertThat(objects.get(1).path("line").asInt()).isEqualTo(2);
    assertThat(objects.get(1).at("/error/at").asInt()).isEqualTo(2);
    for (String field : List.of("code", "text", "input", "at", "expected", "mend")) {
      assertThat(objects.get(1).path("error").has(field)).as(field).isTrue();
    }
    assertThat(objects.get(3).at("/answer/text").asText()).isEqualTo("32");
  }

  @Test
  void theWorstLineDecidesTheExitStatus() throws IOException {
    assertThat(work(GOOD).status()).isZero();
    assertThat(work(GOOD, TWO_VALUES).status()).isEqualTo(3);
    assertThat(work(TWO_VALUES, BAD, GOOD).status()).isEqualTo(2);
    assertThat(ExitStatus.UNREADABLE.and(ExitStatus.NOT_SINGLE)).isEqualTo(ExitStatus.UNREADABLE);
    assertThat(ExitStatus.DONE.and(ExitStatus.NOT_SINGLE)).isEqualTo(ExitStatus.NOT_SINGLE);
    assertThat(ExitStatus.CHECK_FAILED.and(ExitStatus.UNREADABLE))
        .isEqualTo(ExitStatus.CHECK_FAILED);
  }

  @Test
  void onlyTheFirstSemicolonParts() throws IOException {
    assertThat(work("x^2-1 ; S_2 ; S_3").status()).isEqualTo(2);
  }

  @Test
  void aFileThatIsNotThereIsNamed() {
    Shell shell = Shell.run("work", "--file", folder.resolve("none.txt").toString());
    assertThat(shell.status()).isEqualTo(2);
    assertThat(shell.err()).contains("error: ", "none.txt");
  }

  @Test
  void aLineMayBeAWholeSentence() throws IOException {
    Shell shell = work(GOOD, "Let r, s be the roots of x^2 - 5x + 3 = 0. Find r^2 + s^2.");

    assertThat(shell.status()).isZero();
    assertThat(shell.objects())
        .extracting(o -> o.at("/answer/text").asText())
        .containsExactly("32", "19");
  }
}
