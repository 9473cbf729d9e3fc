package rootwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.paper.FiledPaper;
import rootwright.desk.paper.PaperFile;
import rootwright.press.paper.BlockedException;

/** A command that does one thing with the file of a paper, and says what is in the way. */
abstract class PaperFileCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(paramLabel = "PAPER", description = "The file of the paper.")
  Path paper = Path.of("");

  @Option(names = "--json", description = "One JSON object.")
  boolean json;

  PaperFileCommand(Console console) {
    this.console = console;
  }

  @Override
  public final Integer call() throws InterruptedException {
    return PaperAction.exitStatus(console, json, () -> act(new PaperFile(paper)));
  }

  /** Does it. */
  abstract void act(PaperFile file)
      throws UnreadableException, BlockedException, IOException, InterruptedException;

  final Console console() {
    return console;
  }

  /** Shows a paper as it now is, and where it is kept. */
  final void report(FiledPaper now, PaperFile kept) {
    new PaperReport(console, json).print(now, kept);
  }

  /** Keeps a changed paper in its file and shows it. */
  final void keep(FiledPaper changed, PaperFile file) throws IOException {
    file.write(changed);
    report(changed, file);
  }

  /**
   * Makes sure that no file is written over.
   *
   * @throws IllegalArgumentException if there is one
   */
  static void requireFree(Path path) {
    if (Files.exists(path)) {
      throw new IllegalArgumentException("there is a file already at " + path);
    }
  }
}
