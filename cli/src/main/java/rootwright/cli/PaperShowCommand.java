package rootwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rootwright.desk.paper.PaperFile;

/** {@code ./rootwright paper show}: what stands in a paper and how far it has come. */
@Command(
    name = "show",
    description = "Show a paper: its state, items, keys, and which keys are stale.")
final class PaperShowCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(paramLabel = "PAPER", description = "The file of the paper.")
  Path paper = Path.of("");

  @Option(names = "--json", description = "One JSON object.")
  boolean json;

  PaperShowCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws InterruptedException {
    return PaperAction.exitStatus(
        console,
        json,
        () -> {
          PaperFile file = new PaperFile(paper);
          new PaperReport(console, json).print(file.read(), file);
        });
  }
}
