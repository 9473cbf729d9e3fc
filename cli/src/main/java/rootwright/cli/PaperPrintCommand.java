package rootwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rootwright.desk.Desk;
import rootwright.desk.paper.PaperFile;

/** {@code ./rootwright paper print}: prints a frozen paper. */
@Command(
    name = "print",
    description =
        "Print a frozen paper. What the folder has already is not printed again, so a run that was stopped goes on where it was.")
final class PaperPrintCommand implements Callable<Integer> {

  private final Console console;
  private final Desk desk;

  @Parameters(paramLabel = "PAPER", description = "The file of the paper.")
  Path paper = Path.of("");

  @Mixin PrintOptions printing = new PrintOptions();

  @Option(names = "--json", description = "One JSON object.")
  boolean json;

  PaperPrintCommand(Console console, Desk desk) {
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
          printing.print(desk.papers(), file, console);
          console.out().println("paper code " + file.read().code());
        });
  }
}
