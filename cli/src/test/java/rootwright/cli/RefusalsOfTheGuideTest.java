package rootwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** What the guide says is refused is refused, each with its reason. */
class RefusalsOfTheGuideTest {

  @ParameterizedTest
  @CsvFileSource(resources = "refusals-of-the-guide.csv", delimiter = ';', emptyValue = "")
  void whatTheGuideRefusesIsRefused(String page, String polynomial, String find, String expected) {
    Shell shell = Shell.workAsJson(polynomial == null ? "" : polynomial, find);
    JsonNode reply = shell.json();
    String said =
        reply.has("error")
            ? reply.at("/error/code").asText()
            : reply.at("/answer/kind").asText().equals("none")
                ? "none"
                : reply.path("routes").isEmpty() ? "no working" : "worked";
    assertThat(said).as(page + ": " + shell.out()).isEqualTo(expected);
    assertThat(shell.status()).isIn(reply.has("error") ? new Integer[] {2} : new Integer[] {0, 3});
  }

  @Test
  void everyPageOfTheTableIsThere() throws IOException {
    Path table = Path.of("src/test/resources/rootwright/cli/refusals-of-the-guide.csv");
    assertThat(Files.readAllLines(table).stream().filter(line -> !line.startsWith("#")))
        .allMatch(line -> Files.exists(Path.of("..", "docs", line.split(";")[0] + ".md")));
  }
}
