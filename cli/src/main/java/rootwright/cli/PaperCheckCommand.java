package rootwright.cli;

import java.io.IOException;
import picocli.CommandLine.Command;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.Desk;
import rootwright.desk.paper.PaperFile;
import rootwright.press.paper.BlockedException;

/** {@code ./rootwright paper check}: reads every statement anew. */
@Command(
    name = "check",
    description = "Read every statement anew, find what is missing, compare the versions.")
final class PaperCheckCommand extends PaperFileCommand {

  private final Desk desk;

  PaperCheckCommand(Console console, Desk desk) {
    super(console);
    this.desk = desk;
  }

  @Override
  void act(PaperFile file)
      throws UnreadableException, BlockedException, IOException, InterruptedException {
    keep(desk.papers().checked(file.read()), file);
  }
}
