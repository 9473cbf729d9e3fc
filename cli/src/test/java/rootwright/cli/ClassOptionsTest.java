package rootwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A class is described once and called by its name from then on. */
class ClassOptionsTest {

  @TempDir Path folder;

  private Shell work(String... options) {
    List<String> arguments =
        new ArrayList<>(
            List.of(
                "work",
                "--polynomial",
                "5x^3 - 10x^2 + x - 4",
                "--find",
                "Σ 1/(r-3)",
                "--json",
                "--folder",
                folder.toString()));
    arguments.addAll(List.of(options));
    return Shell.run(arguments.toArray(String[]::new));
  }

  private static List<String> routes(Shell shell) {
    return Shell.texts(shell.json().path("routes"), "name");
  }

  @Test
  void bansThatWereKeptHoldWheneverTheClassIsNamed() {
    assertThat(routes(work())).contains("log-derivative", "transform");
    assertThat(routes(work("--without", "log-derivative", "--keep-class", "year-9")))
        .doesNotContain("log-derivative");
    assertThat(routes(work("--class", "year-9")))
        .doesNotContain("log-derivative")
        .contains("transform");
    assertThat(routes(work("--class", "year-9", "--without", "transform")))
        .doesNotContain("log-derivative", "transform");
    assertThat(routes(work("--class", "year-10"))).contains("log-derivative");
    assertThat(folder.resolve("class-year-9.json")).content().contains("log-derivative");
  }

  @Test
  void aNameThatIsNoFileNameIsRefused() {
    Shell shell = work("--class", "../elsewhere");
    assertThat(shell.status()).isEqualTo(2);
    assertThat(shell.err()).contains("../elsewhere", "letters, digits and hyphens");
  }

  @Test
  void aRouteThatNobodyKnowsIsNoted() {
    assertThat(work("--without", "log-derivativ").err())
        .contains("log-derivativ", "log-derivative");
  }
}
