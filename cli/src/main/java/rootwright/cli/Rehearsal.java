package rootwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Plays the usual commands through once, all in one process and with nothing printed, so that the
 * archive of classes which the launcher has Java write at its end holds what they need. A command
 * that starts from such an archive takes about half the time to begin.
 */
final class Rehearsal {

  private static final List<String> PROBLEMS =
      List.of(
          "x^3 - 6x^2 + 5x - 1 ; Σ 1/r^2 ; choice",
          "5x^3 - 10x^2 + x - 4 ; Σ 1/(r-3)",
          "2x^3 - 6x^2 + x + 5 ; r^2 + s^2 + t^2 ; integer",
          "3x^3 - 5x + 7 ; discriminant",
          "x^3 - 2x^2 + 5x - 3 ; polynomial with roots (2r-1)",
          "prove ; Let $P$ be a real cubic. Prove that $P(x) = 0$ has a real solution. ; 5");

  private Rehearsal() {}

  /** Plays everything through in the folder named, which the caller takes away again. */
  public static void main(String[] arguments) throws IOException {
    System.exit(play(Path.of(arguments[0])));
  }

  /** The worst exit status of all commands; they write into this folder only. */
  static int play(Path folder) throws IOException {
    Path problems = folder.resolve("problems.txt");
    Files.write(problems, PROBLEMS, StandardCharsets.UTF_8);
    Path working = folder.resolve("working.txt");
    Files.writeString(working, "e_1 = 3\nr^2 + s^2 + t^2 = 9 - 1\n", StandardCharsets.UTF_8);
    int worst = 0;
    for (List<String> command : commands(problems, working, folder.resolve("out"))) {
      worst = Math.max(worst, Main.commandLine(silent()).execute(command.toArray(String[]::new)));
    }
    return worst;
  }

  private static List<List<String>> commands(Path problems, Path working, Path out) {
    String polynomial = "2x^3 - 6x^2 + x + 5";
    return List.of(
        List.of("work", "--polynomial", polynomial, "--find", "S_2"),
        List.of("work", "--polynomial", polynomial, "--find", "Σ 1/(r-3)", "--json"),
        List.of("check", "--polynomial", polynomial, "--find", "Σ r^2", "--lines", working + ""),
        List.of("compose", "--ask", "Σ 1/r^2", "--many", "1", "--size", "6", "--seed", "1"),
        List.of("paper", "--file", problems + "", "--out", out + "", "--as", "pdf,html,text"),
        List.of("board", "slides", "--as", "html,pdf", "--out", out + ""));
  }

  private static Console silent() {
    return new Console(
        new PrintWriter(Writer.nullWriter()),
        new PrintWriter(Writer.nullWriter()),
        new BufferedReader(new StringReader("")),
        false,
        80);
  }
}
