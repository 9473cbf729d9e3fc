package rootwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BoardTest {

  @Test
  void theTopicsAreOneObject() {
    JsonNode topics = Shell.run("board", "topics", "--json").json().path("topics");

    assertThat(topics.path("newton-identities").asText()).isEqualTo("Newton's identities");
    assertThat(topics).hasSize(13);
  }

  @Test
  void aCheckedPlanSaysItsTimesAndWhatEndsTooLate() {
    Shell shell =
        Shell.run("board", "check", "--topic", "rational-roots", "--minutes", "2", "--json");
    JsonNode object = shell.json();

    assertThat(shell.status()).isEqualTo(ExitStatus.UNREADABLE.code());
    long sum = 0;
    for (JsonNode step : object.path("steps")) {
      assertThat(step.path("fromMillis").asLong()).isEqualTo(sum);
      sum += step.path("millis").asLong();
    }
    assertThat(sum).isEqualTo(object.path("millis").asLong()).isGreaterThan(120_000);
    assertThat(object.at("/complaints/0/text").asText()).contains("longer than the 2 minutes");
  }

  @Test
  void aBadLineIsNamedWithItsPlace(@TempDir Path folder) throws IOException {
    String plan = Shell.run("board", "plan", "--topic", "log-derivative").out();
    Path file = folder.resolve("plan.yaml");
    Files.writeString(file, plan.replaceFirst("(?m)^( +)write: .*", "$1write: e_1 = r"));
    Shell shell =
        Shell.run("board", "slides", file.toString(), "--out", folder.toString(), "--json");
    JsonNode complaint = shell.json().at("/complaints/0");

    assertThat(shell.status()).isEqualTo(ExitStatus.UNREADABLE.code());
    int line = complaint.path("line").asInt();
    assertThat(Files.readAllLines(file).get(line - 1)).contains("e_1 = r");
    assertThat(shell.err()).contains("line " + line + ":");
  }

  @Test
  void theFilesOfALessonAreListed(@TempDir Path folder) {
    String out = folder.toString();
    JsonNode files =
        Shell.run("board", "captions", "--topic", "rational-roots", "--out", out, "--json")
            .json()
            .path("files");

    assertThat(files).hasSize(3);
    files.forEach(file -> assertThat(Path.of(file.asText())).isNotEmptyFile());
  }
}
