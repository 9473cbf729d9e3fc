package rootwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rootwright.desk.Desk;
import rootwright.desk.paper.FiledPaper;
import rootwright.desk.paper.PaperFile;

/** {@code ./rootwright paper check}: reads every statement anew. */
@Command(
    name = "check",
    description = "Read every statement anew, find what is missing, compare the versions.")
final class PaperCheckCommand implements Callable<Integer> {

  private final Console console;
  private final Desk desk;

  @Parameters(paramLabel = "PAPER", description = "The file of the paper.")
  Path paper = Path.of("");

  @Option(names = "--json", description = "One JSON object.")
  boolean json;

  PaperCheckCommand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
  }

  @Override
  public Integer call() throws InterruptedException {
    return PaperAction.exitStatus(
        console,
        json,
        () -> {
          PaperFile file = new PaperFile(paper);
          FiledPaper checked = desk.papers().checked(file.read());
          file.write(checked);
          new PaperReport(console, json).print(checked, file);
        });
  }
}
