package rootwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rootwright.desk.Desk;
import rootwright.desk.paper.FiledPaper;
import rootwright.desk.paper.PaperFile;

/** {@code ./rootwright paper correct}: begins a new edition of a frozen paper. */
@Command(
    name = "correct",
    description =
        "Begin a new edition of a frozen paper in a file of its own. Edit, check and freeze that; printing it also prints what was corrected.")
final class PaperCorrectCommand implements Callable<Integer> {

  private final Console console;
  private final Desk desk;

  @Parameters(paramLabel = "PAPER", description = "The file of the paper.")
  Path paper = Path.of("");

  @Option(
      names = "--to",
      required = true,
      paramLabel = "FILE",
      description = "The file of the new edition.")
  Path to = Path.of("");

  @Option(
      names = "--cause",
      required = true,
      paramLabel = "SENTENCE",
      description = "Why there is a new edition, one sentence.")
  String cause = "";

  @Option(names = "--date", description = "The day of the new edition; today without.")
  LocalDate date = LocalDate.now(ZoneId.systemDefault());

  @Option(names = "--json", description = "One JSON object.")
  boolean json;

  PaperCorrectCommand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
  }

  @Override
  public Integer call() throws InterruptedException {
    return PaperAction.exitStatus(
        console,
        json,
        () -> {
          if (Files.exists(to)) {
            throw new IllegalArgumentException("there is a file already at " + to);
          }
          PaperFile later = new PaperFile(to);
          FiledPaper next = desk.papers().correct(new PaperFile(paper), later, date, cause);
          new PaperReport(console, json).print(next, later);
        });
  }
}
