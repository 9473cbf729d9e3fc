package rootwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rootwright.algebra.notation.ErrorCaret;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.Desk;
import rootwright.desk.contract.FormulaForms;
import rootwright.desk.contract.RefusalContract;
import rootwright.desk.contract.ReviewContract;
import rootwright.working.problem.Statement;
import rootwright.working.review.Review;

/** {@code ./rootwright check}: somebody's lines of working, judged one by one. */
@Command(
    name = "check",
    description =
        "Check somebody's working: which lines follow, which are true but unexplained, which is the"
            + " first wrong one, and the wrong turning behind it.")
final class CheckCommand implements Callable<Integer> {

  /** More lines than a solution has; beyond, something else was given by mistake. */
  private static final int MOST_LINES = 500;

  private final Console console;
  private final Desk desk;

  @Option(
      names = "--polynomial",
      paramLabel = "TEXT",
      description =
          "The polynomial or equation, or two with “and” between them; may be left out if the"
              + " ask brings its own conditions.")
  String polynomial = "";

  @Option(names = "--find", required = true, paramLabel = "TEXT", description = "What was asked.")
  String find = "";

  @Option(
      names = "--roots",
      split = ",",
      paramLabel = "NAME",
      description = "Names of the roots, with commas between them.")
  List<String> roots = List.of();

  @Option(names = "--unknown", paramLabel = "LETTER", description = "The letter of the polynomial.")
  @Nullable String unknown;

  @Option(
      names = "--line",
      paramLabel = "TEXT",
      description = "A line of the working; once for each line, in order.")
  List<String> lines = List.of();

  @Option(
      names = "--lines",
      paramLabel = "FILE",
      description = "A text file with the lines of the working; - for standard input.")
  @Nullable Path file;

  @Option(names = "--json", description = "One JSON object.")
  boolean json;

  CheckCommand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
  }

  @Override
  public Integer call() throws IOException {
    try {
      List<String> all = allLines();
      if (all.stream().allMatch(String::isBlank)) {
        console.err().println("error: there is no line to check: give --line, or --lines FILE");
        return ExitStatus.UNREADABLE.code();
      } else if (all.size() > MOST_LINES) {
        console
            .err()
            .printf("error: %d lines; at most %d are checked at once%n", all.size(), MOST_LINES);
        return ExitStatus.UNREADABLE.code();
      }
      Statement statement = new Statement(polynomial, find, roots, Optional.ofNullable(unknown));
      Review review = desk.review(statement, all);
      console
          .out()
          .println(
              json
                  ? ReviewContract.of(review, FormulaForms.FOR_SCRIPTS)
                  : new ReviewReport(console).of(review));
      return ExitStatus.DONE.code();
    } catch (UnreadableException unreadable) {
      if (json) {
        console.out().println(RefusalContract.of(unreadable.refusal()));
      }
      console.err().println(ErrorCaret.write(unreadable.refusal()));
      return ExitStatus.UNREADABLE.code();
    } catch (IOException unread) {
      console.err().println("error: " + file + " cannot be read: " + unread.getMessage());
      return ExitStatus.UNREADABLE.code();
    }
  }

  private List<String> allLines() throws IOException {
    if (file == null) {
      return lines;
    }
    List<String> all = new ArrayList<>(lines);
    if (file.toString().equals("-")) {
      for (String line = console.in().readLine();
          line != null && all.size() <= MOST_LINES;
          line = console.in().readLine()) {
        all.add(line);
      }
    } else {
      all.addAll(Files.readAllLines(file));
    }
    return all;
  }
}
