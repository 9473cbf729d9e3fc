package rootwright.cli;

import java.io.IOException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.Desk;
import rootwright.desk.paper.PaperFile;
import rootwright.press.paper.BlockedException;

/** {@code ./rootwright paper print}: prints a frozen paper. */
@Command(
    name = "print",
    description =
        "Print a frozen paper. What the folder has already is not printed again, so a run that was stopped goes on where it was.")
final class PaperPrintCommand extends PaperFileCommand {

  private final Desk desk;

  @Mixin PrintOptions printing = new PrintOptions();

  PaperPrintCommand(Console console, Desk desk) {
    super(console);
    this.desk = desk;
  }

  @Override
  void act(PaperFile file)
      throws UnreadableException, BlockedException, IOException, InterruptedException {
    printing.print(desk.papers(), file, console());
    console().out().println("paper code " + file.read().code());
  }
}
