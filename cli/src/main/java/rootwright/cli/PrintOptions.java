package rootwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Option;
import rootwright.desk.paper.PaperFile;
import rootwright.desk.paper.Papers;
import rootwright.desk.paper.PrintOrder;
import rootwright.press.document.Layout;
import rootwright.press.document.PageFormat;
import rootwright.press.document.TextSize;
import rootwright.press.paper.BlockedException;

/** What is printed of a paper, how and where. */
final class PrintOptions {

  private static final int MOST_THREADS = 8;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Where the files go (${DEFAULT-VALUE}).",
      defaultValue = ".")
  Path out = Path.of(".");

  @Option(
      names = "--print",
      split = ",",
      paramLabel = "WHAT",
      description =
          "What to print: sheet, key, scored, solutions, routes, hints, marks, handout, compare;"
              + " of a later edition also erratum and notice. All without.")
  List<String> documents = List.of();

  @Option(
      names = "--as",
      split = ",",
      paramLabel = "FORMAT",
      description = "Formats: pdf, html, latex, text, qti (${DEFAULT-VALUE}).",
      defaultValue = "pdf")
  List<String> formats = List.of("pdf");

  @Option(names = "--letter", description = "US Letter instead of A4.")
  boolean letter;

  @Option(
      names = "--size",
      description = "11 points, or 18 or 24 for large print (${DEFAULT-VALUE}).",
      defaultValue = "11")
  int size;

  /** Prints, with a bar on a terminal; what the folder has already is not printed again. */
  void print(Papers papers, PaperFile file, Console console)
      throws BlockedException, IOException, InterruptedException {
    PrintOrder order = new PrintOrder(documents, formats, layout());
    int threads = Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors());
    List<String> names =
        papers.print(
            file,
            order,
            out,
            (done, all) -> {
              synchronized (console) {
                new ProgressBar(console, all).show(done);
              }
            },
            threads);
    new ProgressBar(console, names.size()).clear();
    names.forEach(name -> console.out().println(out.resolve(name)));
  }

  private Layout layout() {
    TextSize text =
        switch (size) {
          case 11 -> TextSize.REGULAR;
          case 18 -> TextSize.LARGE;
          case 24 -> TextSize.GIANT;
          default -> throw new IllegalArgumentException("sizes are 11, 18 and 24 points: " + size);
        };
    return new Layout(letter ? PageFormat.LETTER : PageFormat.A4, text);
  }
}
