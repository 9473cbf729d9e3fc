package rootwright.cli;

import java.io.IOException;
import picocli.CommandLine.Command;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.paper.PaperFile;
import rootwright.press.paper.BlockedException;

/** {@code ./rootwright paper show}: what stands in a paper and how far it has come. */
@Command(
    name = "show",
    description = "Show a paper: its state, items, keys, and which keys are stale.")
final class PaperShowCommand extends PaperFileCommand {

  PaperShowCommand(Console console) {
    super(console);
  }

  @Override
  void act(PaperFile file)
      throws UnreadableException, BlockedException, IOException, InterruptedException {
    report(file.read(), file);
  }
}
