package rootwright.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import picocli.CommandLine.Command;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.Desk;
import rootwright.desk.paper.PaperFile;
import rootwright.press.paper.BlockedException;

/** {@code ./rootwright paper compare}: the versions side by side. */
@Command(
    name = "compare",
    description = "Show the versions of a paper side by side, item by item: statement, key, level.")
final class PaperCompareCommand extends PaperFileCommand {

  private final Desk desk;

  PaperCompareCommand(Console console, Desk desk) {
    super(console);
    this.desk = desk;
  }

  @Override
  void act(PaperFile file)
      throws UnreadableException, BlockedException, IOException, InterruptedException {
    String comparison = desk.papers().comparison(file.read());
    if (json) {
      console().out().println(JsonNodeFactory.instance.objectNode().put("comparison", comparison));
    } else {
      console().out().print(comparison);
    }
  }
}
