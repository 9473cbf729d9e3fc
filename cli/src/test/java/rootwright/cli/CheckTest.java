package rootwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Somebody's working, checked on the command line. */
class CheckTest {

  private static final String[] PROBLEM = {
    "check", "--polynomial", "4x^3-8x^2+3x+6", "--find", "Σ r^2"
  };

  private static Shell check(String... more) {
    String[] all = new String[PROBLEM.length + more.length];
    System.arraycopy(PROBLEM, 0, all, 0, PROBLEM.length);
    System.arraycopy(more, 0, all, PROBLEM.length, more.length);
    return Shell.run(all);
  }

  @Test
  void theFirstWrongLineAndItsSlipAreNamed() {
    Shell shell =
        check("--line", "e1 = 2", "--line", "e2 = 3/4", "--line", "Σ r^2 = 4 + 3/2", "--json");
    JsonNode review = shell.json();
    assertThat(shell.status()).isZero();
    assertThat(review.path("firstWrong").asInt()).isEqualTo(3);
    assertThat(Shell.texts(review.path("lines"), "verdict"))
        .containsExactly("follows", "follows", "wrong");
    assertThat(Shell.texts(review.at("/lines/2/slips"), "name")).contains("cross-sign");
    assertThat(review.at("/end/code").asText()).isEqualTo("elsewhere");
  }

  @Test
  void linesAreReadFromAFileAndShownWithTheirSigns(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("working.txt");
    Files.writeString(file, "r+s+t = 2, rs+st+tr = 3/4\n\nΣr² = (r+s+t)² − 2(rs+st+tr)\n= 5/2\n");
    Shell shell = check("--lines", file.toString());
    assertThat(shell.out())
        .contains("1 ✓", "3 ✓", "4 ✓", "No line is wrong. The working arrives at the answer.");
  }

  @Test
  void aLetterThatMustBeThrownOutIsNamedWithItsSlip() {
    Shell shell =
        Shell.run(
            "check",
            "--polynomial",
            "x^2-(m-1)x+(m+1)",
            "--find",
            "m if r^2+s^2 = 4, roots real",
            "--line",
            "(m-1)^2 - 2(m+1) = 4",
            "--line",
            "m^2 - 4m - 5 = 0",
            "--line",
            "so m = 5 or m = -1",
            "--json");
    JsonNode review = shell.json();
    assertThat(shell.status()).isZero();
    assertThat(review.path("firstWrong").asInt()).isEqualTo(3);
    assertThat(Shell.texts(review.at("/lines/2/slips"), "name")).contains("existence-unchecked");
    assertThat(review.at("/end/code").asText()).isEqualTo("elsewhere");
  }

  @Test
  void aProblemWithoutAPolynomialIsCheckedToo() {
    Shell shell =
        Shell.run(
            "check",
            "--find",
            "xyz if x+y+z=3, x^2+y^2+z^2=5, x^3+y^3+z^3=12",
            "--line",
            "xy+yz+zx = (9-5)/2 = 2",
            "--line",
            "12 - 3xyz = 3(5-2)",
            "--line",
            "xyz = 1");
    assertThat(shell.out()).contains("No line is wrong. The working arrives at the answer.");
  }

  @Test
  void whatIsMissingIsSaid() {
    assertThat(check().status()).isEqualTo(2);
    assertThat(check().err()).contains("--line");
    assertThat(check("--lines", "no such file").err()).contains("cannot be read");
    assertThat(Shell.run("check", "--polynomial", "x^^2", "--find", "r", "--line", "1").status())
        .isEqualTo(2);
    assertThat(Shell.run("check", "--polynomial", "7", "--find", "e1", "--line", "1=1").status())
        .isEqualTo(2);
  }

  @Test
  void hugeAndSenselessLinesEndInAJudgement() {
    Shell shell =
        check(
            "--line",
            "((((",
            "--line",
            "r^999999999 = 1",
            "--line",
            "S_(10^9) = 2",
            "--line",
            "1/0 = 2",
            "--line",
            "x".repeat(5000) + " = 1",
            "--json");
    assertThat(shell.status()).isZero();
    assertThat(Shell.texts(shell.json().path("lines"), "verdict"))
        .isSubsetOf("remark", "undecided", "wrong");
  }
}
