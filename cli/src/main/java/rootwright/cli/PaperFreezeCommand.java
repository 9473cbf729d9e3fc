package rootwright.cli;

import java.io.IOException;
import picocli.CommandLine.Command;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.Desk;
import rootwright.desk.paper.PaperFile;
import rootwright.press.paper.BlockedException;

/** {@code ./rootwright paper freeze}: gives a checked paper its code. */
@Command(
    name = "freeze",
    description =
        "Freeze a checked paper under a code of its content; from then on it never changes.")
final class PaperFreezeCommand extends PaperFileCommand {

  private final Desk desk;

  PaperFreezeCommand(Console console, Desk desk) {
    super(console);
    this.desk = desk;
  }

  @Override
  void act(PaperFile file)
      throws UnreadableException, BlockedException, IOException, InterruptedException {
    keep(desk.papers().frozen(file.read()), file);
  }
}
