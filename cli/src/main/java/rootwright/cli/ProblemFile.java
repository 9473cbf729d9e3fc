package rootwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import rootwright.algebra.notation.Refusal;
import rootwright.working.problem.Statement;

/** Works a list of problems, one a line, and goes on after a bad line. */
final class ProblemFile {

  private final Console console;
  private final WorkPrinter printer;

  ProblemFile(Console console, WorkPrinter printer) {
    this.console = console;
    this.printer = printer;
  }

  ExitStatus work(Path file) throws IOException {
    if (!Files.isReadable(file) || Files.isDirectory(file)) {
      console.err().println("error: no file can be read at " + file);
      return ExitStatus.UNREADABLE;
    }
    List<String> lines =
        new String(Files.readAllBytes(file), StandardCharsets.UTF_8).lines().toList();
    ExitStatus worst = ExitStatus.DONE;
    ProgressBar progress = new ProgressBar(console, lines.size());
    for (int k = 0; k < lines.size(); k++) {
      String line = lines.get(k).strip();
      if (!line.isEmpty() && !line.startsWith("#")) {
        progress.clear();
        worst = worst.and(work(line, k + 1));
      }
      progress.show(k + 1);
    }
    progress.clear();
    return worst;
  }

  private ExitStatus work(String line, int number) {
    int semicolon = line.indexOf(';');
    if (semicolon < 0) {
      printer.refuse(
          new Refusal(
              "no-ask",
              "There is no ask: write the polynomial, a semicolon and the ask.",
              line,
              line.codePointCount(0, line.length()),
              "; and an ask",
              line + " ; S_2"),
          OptionalInt.of(number));
      return ExitStatus.UNREADABLE;
    }
    return printer.work(
        Statement.of(line.substring(0, semicolon).strip(), line.substring(semicolon + 1).strip()),
        OptionalInt.of(number));
  }
}
