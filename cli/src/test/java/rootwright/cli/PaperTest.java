package rootwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Papers as a coach makes them on the command line. */
class PaperTest {

  private static Path problems(Path folder, String... lines) throws Exception {
    return Files.write(folder.resolve("problems.txt"), List.of(lines));
  }

  @Test
  void thePaperIsDraftedCheckedFrozenPrintedAndCorrectedStepByStep(@TempDir Path folder)
      throws Exception {
    Path problems =
        problems(
            folder,
            "# Thursday",
            "x^3 - 6x^2 + 5x - 1 ; Σ 1/r^2",
            "x^2 - 3x + 1 ; r^2 + s^2 ; short ; 2");
    String paper = folder.resolve("thursday.yaml").toString();
    String out = folder.resolve("out").toString();
    Shell shell = Shell.run("paper", "draft", paper, "--file", problems.toString());
    assertThat(shell.status()).isZero();
    assertThat(shell.out()).contains("draft", "key 13", "key 7", "2 points");
    shell = Shell.run("paper", "print", paper, "--out", out);
    assertThat(shell.status()).isEqualTo(2);
    assertThat(shell.err()).contains("only a frozen paper is printed");
    shell = Shell.run("paper", "check", paper);
    assertThat(shell.status()).isZero();
    shell = Shell.run("paper", "freeze", paper);
    assertThat(shell.status()).isZero();
    assertThat(shell.out()).contains("frozen, paper code ");
    shell = Shell.run("paper", "edit", paper, "--item", "1", "--find", "S_2");
    assertThat(shell.status()).isEqualTo(2);
    assertThat(shell.err()).contains("a new edition corrects it");
    shell = Shell.run("paper", "print", paper, "--out", out, "--as", "text");
    assertThat(shell.status()).isZero();
    assertThat(shell.out()).contains("-sheet.txt", "-key.txt");
    String later = folder.resolve("thursday-2.yaml").toString();
    shell = Shell.run("paper", "correct", paper, "--to", later, "--cause", "A misprint.");
    assertThat(shell.status()).isZero();
    shell = Shell.run("paper", "edit", later, "--item", "1", "--given", "x^3 - 6x^2 + 5x - 2");
    assertThat(shell.status()).isZero();
    assertThat(shell.out()).contains("STALE");
    shell = Shell.run("paper", "freeze", later);
    assertThat(shell.status()).isEqualTo(2);
    assertThat(shell.err()).contains("stale");
    shell = Shell.run("paper", "check", later);
    assertThat(shell.status()).isZero();
    shell = Shell.run("paper", "freeze", later);
    assertThat(shell.status()).isZero();
    shell = Shell.run("paper", "print", later, "--out", out, "--as", "text", "--print", "erratum");
    assertThat(shell.status()).isZero();
    assertThat(shell.out()).contains("-erratum.txt");
    shell = Shell.run("paper", "compare", later);
    assertThat(shell.status()).isZero();
    assertThat(shell.out()).contains("versions compared");
    shell = Shell.run("paper", "show", later, "--json");
    assertThat(shell.status()).isZero();
    assertThat(shell.out()).contains("\"state\":\"printed\"", "\"stale\":[]");
  }

  @Test
  void everythingAtOnceMakesTheSamePaper(@TempDir Path folder) throws Exception {
    Path problems = problems(folder, "x^3 - 6x^2 + 5x - 1 ; Σ 1/r^2");
    Shell shell =
        Shell.run(
            "paper", "--file", problems.toString(), "--out", folder.toString(), "--as", "text");
    assertThat(shell.status()).isZero();
    assertThat(shell.out()).contains("paper code ", "-paper.yaml", "-solutions.txt");
  }

  @Test
  void wrongInputIsAnsweredWithThePlaceAndAWayOut(@TempDir Path folder) throws Exception {
    refused(folder, "no ask", "x^3 - 6x^2 + 5x - 1");
    refused(folder, "there is no problem", "# nothing");
    refused(folder, "line 1: there is no form “essay”", "x^2 - 2 ; r s ; essay");
    refused(folder, "error:", "x^3 - $ ; r + s");
    refused(folder, "--form", "x^2 - 2x - 1 ; r + s", "--form", "essay");
    refused(folder, "sizes are 11, 18 and 24", "x^2 - 2x - 1 ; r + s", "--size", "12");
    refused(folder, "there is no format “docx”", "x^2 - 2x - 1 ; r + s", "--as", "docx");
    refused(folder, "there is no document “video”", "x^2 - 2x - 1 ; r + s", "--print", "video");
    refused(folder, "at least 1 point", "x^2 - 2x - 1 ; r + s", "--points", "-3");
    refused(folder, "versions", "x^2 - 2x - 1 ; r + s", "--versions", "5000");
    refused(folder, "versions", "x^2 - 2x - 1 ; r + s", "--versions", "0");
    refused(
        folder, "ask for a short answer", "x^3 - x^2 - 4x - 1 ; r^2 s + s^2 t + t^2 r ; choice");
  }

  private static void refused(Path folder, String because, String line, String... options)
      throws Exception {
    List<String> arguments =
        new ArrayList<>(
            List.of(
                "paper",
                "--file",
                problems(folder, line).toString(),
                "--out",
                folder.resolve("out").toString()));
    arguments.addAll(List.of(options));
    Shell shell = Shell.run(arguments.toArray(String[]::new));
    assertThat(shell.status()).as(line).isEqualTo(2);
    assertThat(shell.err()).contains(because.equals("--form") ? "there is no form" : because);
  }

  /** A problem whose condition is not printed is another problem, with a wrong key. */
  @Test
  void whateverIsGivenStandsOnTheSheet(@TempDir Path folder) throws Exception {
    Path problems = folder.resolve("problems.txt");
    Files.writeString(
        problems,
        """
        x^3 - 9x^2 + kx - 24 ; k if r = 2s
        x^2 - 3x + 1 and x^3 - 2x + 2 ; Π (r - s)
        2cos(2π/7), 2cos(4π/7), 2cos(6π/7) ; Σ 1/r
        x^4 - 6x^3 + 7x^2 - 6x + 1 ; sum of the real roots
        x^2 - 4x + 1 ; sum of the roots of P(P(x)) = 0
         ; xyz if x+y+z = 3, x^2+y^2+z^2 = 5, x^3+y^3+z^3 = 12
        """);
    Shell shell =
        Shell.run(
            "paper",
            "--file",
            problems.toString(),
            "--out",
            folder.toString(),
            "--as",
            "text",
            "--as",
            "pdf",
            "--print",
            "sheet");
    assertThat(shell.status()).as(shell.err()).isZero();
    try (var files = Files.list(folder)) {
      Path sheet =
          files.filter(file -> file.toString().endsWith("sheet.txt")).findFirst().orElseThrow();
      assertThat(Files.readString(sheet).replaceAll("\\s+", " "))
          .contains("for which r = 2s", "x³ − 2x + 2", "cos(2π/7)", "the sum of the real roots")
          .contains("P(P(x)) = 0", "x³ + y³ + z³ = 12");
    }
  }

  @Test
  void everyKindOfProblemCanBePrinted(@TempDir Path folder) throws Exception {
    List<String> lines = new ArrayList<>();
    try (var rows = PaperTest.class.getResourceAsStream("kinds-of-problem.csv")) {
      for (String row : new String(rows.readAllBytes(), StandardCharsets.UTF_8).split("\n")) {
        if (!row.startsWith("#")) {
          lines.add(row.substring(0, row.lastIndexOf(';')).replaceFirst(";", " ; "));
        }
      }
    }
    Path problems = folder.resolve("problems.txt");
    Files.write(problems, lines);
    Shell shell =
        Shell.run(
            "paper",
            "--file",
            problems.toString(),
            "--out",
            folder.toString(),
            "--print",
            "sheet,hints");
    assertThat(shell.status()).as(shell.err()).isZero();
    assertThat(shell.out()).contains("-sheet.pdf", "-hints.pdf");
  }
}
