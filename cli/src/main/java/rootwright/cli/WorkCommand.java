package rootwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rootwright.desk.Desk;
import rootwright.working.problem.Statement;

/** {@code ./rootwright work}: one problem, or a file of them. */
@Command(
    name = "work",
    description =
        "Work a problem: the exact answer, the routes a student can follow, the wrong turnings,"
            + " and what two independent checks say. Without a problem, on a terminal, asks for it.")
final class WorkCommand implements Callable<Integer> {

  private final Console console;
  private final Desk desk;

  @Parameters(
      arity = "0..1",
      paramLabel = "SENTENCE",
      description =
          "A whole problem: “Let r, s, t be the roots of x^3 - 6x^2 + 5x - 1 = 0. Find r^2 + s^2 +"
              + " t^2.”")
  @Nullable String sentence;

  @Option(
      names = "--polynomial",
      paramLabel = "TEXT",
      description = "The polynomial or equation: 3x^3 - 5x + 7, LaTeX, or 3 0 -5 7.")
  @Nullable String polynomial;

  @Option(
      names = "--find",
      paramLabel = "TEXT",
      description = "What is wanted: Σ 1/(r-2), r^2 s + s^2 t + t^2 r, S_20, discriminant, …")
  @Nullable String find;

  @Option(
      names = "--roots",
      split = ",",
      paramLabel = "NAME",
      description = "Names of the roots, with commas between them.")
  List<String> roots = List.of();

  @Option(names = "--unknown", paramLabel = "LETTER", description = "The letter of the polynomial.")
  @Nullable String unknown;

  @Mixin ClassOptions taught = new ClassOptions();

  @Option(
      names = "--file",
      paramLabel = "FILE",
      description = "A list of problems: polynomial ; ask on each line, # for comments.")
  @Nullable Path file;

  @Option(names = "--json", description = "One JSON object for each problem.")
  boolean json;

  @Option(names = "--latex", description = "The solution as LaTeX source.")
  boolean latex;

  @Option(
      names = "--all",
      description = "Also which routes do not fit and which wrong turnings do not show, and why.")
  boolean all;

  @Option(names = "--statement", description = "Only the sentence that a sheet would print.")
  boolean statement;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      description = "How long a problem may take before it is refused (${DEFAULT-VALUE}).",
      defaultValue = "60")
  long seconds;

  WorkCommand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
  }

  @Override
  public Integer call() throws IOException {
    OutputForm form =
        json
            ? OutputForm.JSON
            : latex
                ? OutputForm.LATEX
                : statement
                    ? OutputForm.STATEMENT
                    : all ? OutputForm.TERMINAL_IN_FULL : OutputForm.TERMINAL;
    WorkPrinter printer;
    try {
      printer =
          new WorkPrinter(
              console,
              desk,
              taught.profile(desk, console),
              new Patience(Duration.ofSeconds(seconds)),
              form);
    } catch (IllegalArgumentException unfit) {
      console.err().println("error: " + unfit.getMessage());
      return ExitStatus.UNREADABLE.code();
    }
    if (file != null) {
      return new ProblemFile(console, printer).work(file).code();
    }
    if (sentence != null) {
      if (polynomial != null || find != null) {
        console.err().println("error: a whole problem stands beside --polynomial or --find");
        return ExitStatus.UNREADABLE.code();
      }
      polynomial = "";
      find = sentence;
    }
    if (polynomial == null && find != null && printer.standsAlone(find)) {
      polynomial = "";
    }
    if (polynomial == null || find == null) {
      if (!console.terminal() || json || latex) {
        console
            .err()
            .println(
                "error: a problem needs --polynomial and --find, or a whole sentence, or --file");
        return ExitStatus.UNREADABLE.code();
      }
      polynomial = polynomial == null ? ask("polynomial: ") : polynomial;
      find = find == null ? ask("find: ") : find;
    }
    return printer
        .work(new Statement(polynomial, find, roots, Optional.ofNullable(unknown)))
        .code();
  }

  private String ask(String prompt) throws IOException {
    console.out().print(prompt);
    console.out().flush();
    String line = console.in().readLine();
    return line == null ? "" : line;
  }
}
