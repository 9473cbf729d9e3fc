package rootwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.Desk;
import rootwright.desk.paper.PaperFile;
import rootwright.press.paper.BlockedException;

/** {@code ./rootwright paper correct}: begins a new edition of a frozen paper. */
@Command(
    name = "correct",
    description =
        "Begin a new edition of a frozen paper in a file of its own. Edit, check and freeze that; printing it also prints what was corrected.")
final class PaperCorrectCommand extends PaperFileCommand {

  private final Desk desk;

  @Option(
      names = "--to",
      required = true,
      paramLabel = "FILE",
      description = "The file of the new edition.")
  Path to = Path.of("");

  @Option(
      names = "--cause",
      required = true,
      paramLabel = "SENTENCE",
      description = "Why there is a new edition, one sentence.")
  String cause = "";

  @Option(names = "--date", description = "The day of the new edition; today without.")
  LocalDate date = LocalDate.now(ZoneId.systemDefault());

  PaperCorrectCommand(Console console, Desk desk) {
    super(console);
    this.desk = desk;
  }

  @Override
  void act(PaperFile file)
      throws UnreadableException, BlockedException, IOException, InterruptedException {
    requireFree(to);
    PaperFile later = new PaperFile(to);
    report(desk.papers().correct(file, later, date, cause), later);
  }
}
