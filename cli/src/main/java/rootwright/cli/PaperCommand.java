package rootwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rootwright.algebra.notation.ErrorCaret;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.Desk;
import rootwright.desk.paper.PaperOrder;
import rootwright.press.PrintedFile;
import rootwright.press.document.Language;
import rootwright.press.document.Layout;
import rootwright.press.document.PageFormat;
import rootwright.press.document.TextSize;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Paper;
import rootwright.working.problem.Statement;

/** {@code ./rootwright paper}: sheet, key, solutions and more of a list of problems. */
@Command(
    name = "paper",
    description =
        "Make a paper of a list of problems: every key is checked, the paper is frozen with a code,"
            + " and its documents are printed.")
final class PaperCommand implements Callable<Integer> {

  private final Console console;
  private final Desk desk;

  @Option(
      names = "--file",
      required = true,
      paramLabel = "FILE",
      description = "The problems: polynomial ; ask on each line, # for comments.")
  Path file = Path.of("");

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Where the files go (${DEFAULT-VALUE}).",
      defaultValue = ".")
  Path out = Path.of(".");

  @Option(
      names = "--title",
      description = "The title (${DEFAULT-VALUE}).",
      defaultValue = "Roots of polynomials")
  String title = "";

  @Option(
      names = "--form",
      description = "How items are answered: short, choice or integer (${DEFAULT-VALUE}).",
      defaultValue = "short")
  String form = "short";

  @Option(
      names = "--print",
      split = ",",
      paramLabel = "WHAT",
      description = "What to print, by name; all without.")
  List<String> documents = List.of();

  @Option(
      names = "--as",
      split = ",",
      paramLabel = "FORMAT",
      description = "Formats: pdf, html, latex, text, qti (${DEFAULT-VALUE}).",
      defaultValue = "pdf")
  List<String> formats = List.of("pdf");

  @Option(
      names = "--versions",
      description = "How many versions (${DEFAULT-VALUE}).",
      defaultValue = "1")
  int versions;

  @Option(
      names = "--points",
      description = "What an item is worth (${DEFAULT-VALUE}).",
      defaultValue = "4")
  int points;

  @Option(
      names = "--seed",
      description = "Of the order in the versions (${DEFAULT-VALUE}).",
      defaultValue = "1")
  long seed;

  @Option(names = "--language", description = "BCP 47 tag (${DEFAULT-VALUE}).", defaultValue = "en")
  String language = "en";

  @Option(names = "--letter", description = "US Letter instead of A4.")
  boolean letter;

  @Option(
      names = "--size",
      description = "11, 18 or 24 points (${DEFAULT-VALUE}).",
      defaultValue = "11")
  int size;

  @Option(names = "--date", description = "The day it is for, such as 2026-11-26; today without.")
  LocalDate date = LocalDate.now(java.time.ZoneId.systemDefault());

  PaperCommand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
  }

  @Override
  public Integer call() throws IOException {
    try {
      PaperOrder order =
          new PaperOrder(
              title, Language.of(language), date, problems(), form, points, versions, seed);
      Paper paper = desk.paper(order);
      Files.createDirectories(out);
      for (PrintedFile printed : desk.print(paper, documents, formats, layout())) {
        Files.write(out.resolve(printed.name()), printed.bytes());
        console.out().println(out.resolve(printed.name()));
      }
      console.out().println("paper code " + paper.code());
      return ExitStatus.DONE.code();
    } catch (UnreadableException unreadable) {
      console.err().println(ErrorCaret.write(unreadable.refusal()));
    } catch (BlockedException blocked) {
      console.err().println("error: " + blocked.getMessage());
    } catch (IllegalArgumentException wish) {
      console.err().println("error: " + wish.getMessage());
    }
    return ExitStatus.UNREADABLE.code();
  }

  private List<Statement> problems() throws IOException {
    if (!Files.isRegularFile(file)) {
      throw new IllegalArgumentException("no file can be read at " + file);
    }
    List<Statement> problems = new ArrayList<>();
    List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
    for (int k = 0; k < lines.size(); k++) {
      String line = lines.get(k).strip();
      if (!line.isEmpty() && !line.startsWith("#")) {
        int semicolon = line.indexOf(';');
        if (semicolon < 0) {
          throw new IllegalArgumentException(
              "line %d has no ask: write the polynomial, a semicolon and the ask".formatted(k + 1));
        }
        problems.add(
            Statement.of(
                line.substring(0, semicolon).strip(), line.substring(semicolon + 1).strip()));
      }
    }
    return problems;
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
