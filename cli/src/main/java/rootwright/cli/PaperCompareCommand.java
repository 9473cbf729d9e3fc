package rootwright.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rootwright.desk.Desk;
import rootwright.desk.paper.PaperFile;

/** {@code ./rootwright paper compare}: the versions side by side. */
@Command(
    name = "compare",
    description = "Show the versions of a paper side by side, item by item: statement, key, level.")
final class PaperCompareCommand implements Callable<Integer> {

  private final Console console;
  private final Desk desk;

  @Parameters(paramLabel = "PAPER", description = "The file of the paper.")
  Path paper = Path.of("");

  @Option(names = "--json", description = "One JSON object.")
  boolean json;

  PaperCompareCommand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
  }

  @Override
  public Integer call() throws InterruptedException {
    return PaperAction.exitStatus(
        console,
        json,
        () -> {
          String comparison = desk.papers().comparison(new PaperFile(paper).read());
          if (json) {
            console
                .out()
                .println(JsonNodeFactory.instance.objectNode().put("comparison", comparison));
          } else {
            console.out().print(comparison);
          }
        });
  }
}
