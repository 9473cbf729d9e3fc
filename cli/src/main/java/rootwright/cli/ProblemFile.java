package rootwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.list.ListedProblem;
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
      progress.clear();
      worst = worst.and(work(lines.get(k), k + 1));
      progress.show(k + 1);
    }
    progress.clear();
    return worst;
  }

  private ExitStatus work(String line, int number) {
    try {
      Optional<Statement> problem = ListedProblem.read(line);
      return problem.isEmpty()
          ? ExitStatus.DONE
          : printer.work(problem.get(), OptionalInt.of(number));
    } catch (UnreadableException unreadable) {
      printer.refuse(unreadable.refusal(), OptionalInt.of(number));
      return ExitStatus.UNREADABLE;
    }
  }
}
