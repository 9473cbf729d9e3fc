package rootwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rootwright.desk.Desk;
import rootwright.desk.paper.FiledPaper;
import rootwright.desk.paper.PaperFile;

/** {@code ./rootwright paper freeze}: gives a checked paper its code. */
@Command(
    name = "freeze",
    description =
        "Freeze a checked paper under a code of its content; from then on it never changes.")
final class PaperFreezeCommand implements Callable<Integer> {

  private final Console console;
  private final Desk desk;

  @Parameters(paramLabel = "PAPER", description = "The file of the paper.")
  Path paper = Path.of("");

  @Option(names = "--json", description = "One JSON object.")
  boolean json;

  PaperFreezeCommand(Console console, Desk desk) {
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
          FiledPaper frozen = desk.papers().frozen(file.read());
          file.write(frozen);
          new PaperReport(console, json).print(frozen, file);
        });
  }
}
