package rootwright.working.slip;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rootwright.algebra.notation.PlainWriter;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

/** Where each wrong turning leads, on an example worked by hand. */
class SlipsOnPrintedExamplesTest {

  private static final Kinds KINDS = new Kinds();

  private static Solution worked(String polynomial, String ask) throws Exception {
    return KINDS.solve(ProblemReader.read(Statement.of(polynomial, ask)), ClassProfile.EVERYTHING);
  }

  private static List<String> valuesOf(String slip, Solution solution) {
    return solution.slips().stream()
        .filter(turning -> turning.name().equals(slip))
        .map(turning -> text(turning.value()))
        .toList();
  }

  private static String text(Answer answer) {
    return PlainWriter.write(answer.formula());
  }

  @ParameterizedTest(name = "{0} on {2} of {1}")
  @CsvFileSource(resources = "printed-examples.csv", delimiter = ';')
  void theWrongTurningLeadsToItsWrongAnswer(
      String slip, String polynomial, String ask, String right, String wrong) throws Exception {
    Solution solution = worked(polynomial, ask);
    assertThat(text(solution.answer())).isEqualTo(right);
    assertThat(valuesOf(slip, solution)).containsSequence(Arrays.asList(wrong.split(" or ")));
    assertThat(solution.slips()).extracting(turning -> text(turning.value())).doesNotContain(right);
  }

  @ParameterizedTest(name = "{0} on {2} of {1}: {3}")
  @CsvFileSource(resources = "harmless.csv", delimiter = ';')
  void aHarmlessWrongTurningIsSilent(String slip, String polynomial, String ask, String why)
      throws Exception {
    Solution solution = worked(polynomial, ask);
    assertThat(solution.silent()).as(why).extracting(Solution.SilentSlip::name).contains(slip);
    assertThat(valuesOf(slip, solution)).isEmpty();
  }

  /** p₂ of 2x² + 2x − 1 is 2, and its discriminant 12. */
  @Test
  void anAskThatOnlyHappensToEqualTheDiscriminantIsNotTakenForIt() throws Exception {
    Solution solution = worked("2x^2+2x-1", "S_2 + 10");
    assertThat(text(solution.answer())).isEqualTo("12");
    assertThat(valuesOf("discriminant-normalisation", solution)).isEmpty();
  }

  @Test
  void everySlipOfTheHouseHasAPrintedExample() throws Exception {
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(getClass().getResourceAsStream("printed-examples.csv")),
                StandardCharsets.UTF_8))) {
      Set<String> shown =
          lines
              .lines()
              .filter(line -> !line.startsWith("#"))
              .map(line -> line.substring(0, line.indexOf(';')))
              .collect(Collectors.toSet());
      assertThat(shown)
          .containsExactlyInAnyOrderElementsOf(
              Stream.concat(Slips.ALL.stream(), RootSlips.ALL.stream())
                  .map(Turning::name)
                  .toList());
    }
  }

  @Test
  void slipNamesAreDistinctAndEverySlipSaysHowToMendIt() {
    assertThat(Slips.ALL).extracting(Slip::name).doesNotHaveDuplicates();
    assertThat(Slips.ALL).allSatisfy(slip -> assertThat(slip.text()).endsWith("."));
    assertThat(Slips.ALL).allSatisfy(slip -> assertThat(slip.weight()).isBetween(1, 99));
  }
}
