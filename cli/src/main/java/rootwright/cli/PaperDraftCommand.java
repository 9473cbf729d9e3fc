package rootwright.cli;

import java.io.IOException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.Desk;
import rootwright.desk.paper.PaperFile;
import rootwright.press.paper.BlockedException;

/** {@code ./rootwright paper draft}: a new paper from a list of problems. */
@Command(
    name = "draft",
    description =
        "Draft a paper from a list of problems: siblings are found, options chosen, hints written. The file is plain text and may be edited.")
final class PaperDraftCommand extends PaperFileCommand {

  private final Desk desk;

  @Mixin DraftOptions draft = new DraftOptions();

  PaperDraftCommand(Console console, Desk desk) {
    super(console);
    this.desk = desk;
  }

  @Override
  void act(PaperFile file)
      throws UnreadableException, BlockedException, IOException, InterruptedException {
    requireFree(paper);
    keep(desk.papers().draft(draft.order()), file);
  }
}
