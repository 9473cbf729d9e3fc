package rootwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Composing at the terminal: what is typed and what must come of it. */
class ComposeTest {

  @TempDir Path folder;

  private static Shell compose(String... options) {
    List<String> arguments = new ArrayList<>(List.of("compose"));
    arguments.addAll(List.of(options));
    return Shell.run(arguments.toArray(String[]::new));
  }

  @Test
  void aComposedProblemIsPrintedWithEverythingACoachNeeds() {
    Shell shell = compose("--ask", "Σ r^2", "--many", "1", "--seed", "3");
    assertThat(shell.status()).isZero();
    assertThat(shell.out())
        .contains("1. Let r, s, t be the roots of")
        .contains("(A)")
        .contains("(D)")
        .contains("key ")
        .contains("comes of")
        .contains("estimated")
        .contains("good: ")
        .contains("distinct roots: not needed, the discriminant is")
        .contains("working: ")
        .contains("looked at")
        .contains("seed 3")
        .contains("The order is filled.");
    assertThat(shell.out().lines().filter(line -> line.strip().startsWith("hint: "))).hasSize(5);
  }

  @Test
  void theLatexHasTheSheetFirstAndTheKeyBehindIt() {
    Shell shell = compose("--ask", "Π (1 + r)", "--many", "2", "--latex");
    assertThat(shell.status()).isZero();
    String sheet = shell.out().substring(0, shell.out().indexOf("\\newpage"));
    String coach = shell.out().substring(shell.out().indexOf("\\newpage"));
    assertThat(sheet).contains("\\begin{enumerate}").contains("(A)~$").doesNotContain("Key");
    assertThat(coach).contains("Key (").contains("Hints:").contains("\\begin{align*}");
    assertThat(shell.out()).isASCII();
  }

  @Test
  void anOrderShownAsYamlGivesTheSameProblemsFromItsFile() throws Exception {
    String[] wishes = {"--ask", "Σ 1/r^2", "--answer", "/4", "--many", "2", "--seed", "5"};
    List<String> show = new ArrayList<>(List.of(wishes));
    show.add("--show-blueprint");
    Shell shown = compose(show.toArray(String[]::new));
    assertThat(shown.status()).isZero();
    Path file = folder.resolve("order.yaml");
    Files.writeString(file, shown.out());
    List<String> direct = new ArrayList<>(List.of(wishes));
    direct.add("--json");
    JsonNode fromOptions = compose(direct.toArray(String[]::new)).json();
    JsonNode fromFile = compose("--blueprint", file.toString(), "--json").json();
    assertThat(fromFile).isEqualTo(fromOptions);
    assertThat(fromFile.path("problems")).hasSize(2);
    JsonNode problem = fromFile.path("problems").path(0);
    assertThat(problem.path("hints")).hasSize(5);
    assertThat(problem.path("options").size()).isBetween(3, 4);
    assertThat(problem.path("level").path("text").asText()).contains("estimated");
    assertThat(problem.path("routes").size()).isGreaterThanOrEqualTo(2);
    assertThat(problem.path("settled")).isNotEmpty();
  }

  @Test
  void anOptionChangesWhatTheFileSays() throws Exception {
    Path file = folder.resolve("order.yaml");
    Files.writeString(file, "ask: \"Σ r^2\"\nmany: 3\nseed: 9\n");
    Shell shell = compose("--blueprint", file.toString(), "--many", "1", "--show-blueprint");
    assertThat(shell.out()).contains("many: 1").contains("seed: 9").contains("ask: \"Σ r^2\"");
  }

  @Test
  void aFaultInTheFileIsToldWithItsLine() throws Exception {
    Path file = folder.resolve("order.yaml");
    Files.writeString(file, "ask: S_2\nlevel: hard\n");
    Shell shell = compose("--blueprint", file.toString());
    assertThat(shell.status()).isEqualTo(2);
    assertThat(shell.err())
        .contains("order.yaml: line 2: level is “hard”; write a whole number from 1 to 5");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--ask roots --roots irreducible | cannot have a rational root wanted here",
        "--family power-sums | the nearest is power-sum",
        "--level 9 | levels go from 1 to 5: 9",
        "--answer nice | write any, whole, 0..999, /12 or =2026",
        "--degree 8 --size 9999 | more than can be numbered",
        "--ask r^2*s+s^2*t+t^2*r | not symmetric",
        "--kinds value | --kinds belongs to --surprise",
        "--ask S_2 --surprise | write one of --ask, --family and --surprise",
        "--avoid no-such-file.txt | no file can be read at no-such-file.txt",
        "--blueprint no-such-file.yaml | no file can be read at no-such-file.yaml",
        "--lead many | the lead cannot be wished as “many”",
      })
  void anOrderThatCannotBeIsToldWhy(String options, String said) {
    Shell shell = compose(options.split(" "));
    assertThat(shell.status()).isEqualTo(2);
    assertThat(shell.err()).startsWith("error: ").contains(said);
    assertThat(shell.out()).isEmpty();
  }

  @Test
  void anOrderThatWouldRunForHoursIsNotStartedUnasked() {
    Shell shell =
        compose(
            "--ask", "Σ r^2", "--degree", "5", "--size", "1000", "--answer", "=1", "--real", "all");
    assertThat(shell.status()).isEqualTo(2);
    assertThat(shell.err())
        .contains("This order has")
        .contains("may take up to")
        .contains("say --long to start it all the same");
  }

  @Test
  void anOrderThatNothingMeetsSaysWhichWishesClashAndWhatWouldHelp() {
    Shell shell =
        compose(
            "--ask",
            "Σ r^2",
            "--size",
            "1",
            "--lead",
            "1",
            "--roots",
            "irreducible",
            "--real",
            "all",
            "--slips",
            "0");
    assertThat(shell.status()).isEqualTo(3);
    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains("None exists: every candidate was looked at.")
        .contains("No polynomial here meets")
        .contains("With coefficients in 1..1 -2..2 -2..2 -2..2 6 are found");
  }

  @Test
  void theFamiliesAreListed() {
    Shell shell = compose("--families");
    assertThat(shell.status()).isZero();
    assertThat(shell.out()).contains("power-sum").contains("log-derivative-sum");
  }

  @Test
  void theRelationOfTwoProblemsIsNamed() {
    Shell mirror =
        Shell.run(
            "twins",
            "--polynomial",
            "2x^3 + 6x^2 + x - 5",
            "--find",
            "Σ r^2",
            "--earlier-polynomial",
            "2x^3 - 6x^2 + x + 5");
    assertThat(mirror.status()).isZero();
    assertThat(mirror.out()).contains("mirror image, same key 8");
    Shell shifted =
        Shell.run(
            "twins",
            "--polynomial",
            "x^3 - 3x^2 - x + 4",
            "--find",
            "Σ 1/(r - 1)",
            "--earlier-polynomial",
            "x^3 - 4x + 1",
            "--earlier-find",
            "Σ 1/r",
            "--json");
    assertThat(shifted.json().path("relation").asText()).isEqualTo("same problem shifted");
    assertThat(shifted.json().path("same").asBoolean()).isFalse();
  }

  @Test
  void aTwinIsNotPutOnTheShelfAndIsNamedByItsRelation() {
    String shelf = folder.resolve("shelf.txt").toString();
    Shell first = add(shelf, "2x^3 - 6x^2 + x + 5", "Σ r^2");
    assertThat(first.status()).isZero();
    assertThat(add(shelf, "4x^3 - 12x^2 + 2x + 10", "Σ r^2").out())
        .contains("Not added")
        .contains("line 2: same problem scaled");
    Shell reversed = add(shelf, "5x^3 + x^2 - 6x + 2", "Σ 1/r^2");
    assertThat(reversed.status()).isEqualTo(3);
    assertThat(reversed.out()).contains("reciprocal twin");
    assertThat(
            Shell.run(
                    "twins",
                    "--shelf",
                    shelf,
                    "--polynomial",
                    "2x^3 + 6x^2 + x - 5",
                    "--find",
                    "Σ r^2")
                .out())
        .contains("line 2: mirror image, same key 8");
  }

  private static Shell add(String shelf, String polynomial, String find) {
    return Shell.run("shelf", "add", "--shelf", shelf, "--polynomial", polynomial, "--find", find);
  }

  @Test
  void aHarderSiblingAndAnEqualOneAreFound() {
    Shell sibling =
        Shell.run(
            "sibling",
            "--polynomial",
            "x^3 - 6x^2 + 5x - 1",
            "--find",
            "Σ 1/r^2",
            "--many",
            "1",
            "--json");
    assertThat(sibling.status()).isZero();
    assertThat(sibling.json().path("problems")).hasSize(1);
    assertThat(sibling.json().path("problems").path(0).path("answer").path("text").asText())
        .isNotEqualTo("13");
  }
}
