package rootwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rootwright.desk.Desk;
import rootwright.desk.paper.FiledPaper;
import rootwright.desk.paper.PaperFile;

/** {@code ./rootwright paper draft}: a new paper from a list of problems. */
@Command(
    name = "draft",
    description =
        "Draft a paper from a list of problems: siblings are found, options chosen, hints written. The file is plain text and may be edited.")
final class PaperDraftCommand implements Callable<Integer> {

  private final Console console;
  private final Desk desk;

  @Parameters(paramLabel = "PAPER", description = "The file that is to hold the paper.")
  Path paper = Path.of("");

  @Mixin DraftOptions draft = new DraftOptions();

  @Option(names = "--json", description = "One JSON object.")
  boolean json;

  PaperDraftCommand(Console console, Desk desk) {
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
          if (Files.exists(paper)) {
            throw new IllegalArgumentException("there is a file already at " + paper);
          }
          FiledPaper drafted = desk.papers().draft(draft.order());
          file.write(drafted);
          new PaperReport(console, json).print(drafted, file);
        });
  }
}
