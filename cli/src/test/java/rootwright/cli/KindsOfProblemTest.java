package rootwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** One problem of every kind that a coach sets, from the command line to its answer. */
class KindsOfProblemTest {

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(
      resources = "kinds-of-problem.csv",
      delimiter = ';',
      emptyValue = "",
      maxCharsPerColumn = 1000)
  void everyKindComesToItsAnswerByAWorking(String polynomial, String ask, String answer) {
    Shell shell = Shell.workAsJson(polynomial == null ? "" : polynomial, ask);
    JsonNode solution = shell.json();
    assertThat(solution.at("/answer/text").asText()).isEqualTo(answer);
    assertThat(solution.path("routes")).as("a working").isNotEmpty();
    assertThat(solution.at("/checks/second/agrees").asBoolean()).isTrue();
    assertThat(solution.path("statement").asText()).isNotBlank();
  }
}
