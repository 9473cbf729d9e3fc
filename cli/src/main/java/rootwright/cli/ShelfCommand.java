package rootwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rootwright.algebra.notation.ErrorCaret;
import rootwright.algebra.notation.UnreadableException;
import rootwright.bank.shelf.ShelfEntry;
import rootwright.bank.shelf.ShelfTwin;
import rootwright.desk.Desk;
import rootwright.working.problem.Statement;

/** {@code ./rootwright shelf}: a plain-text file of problems. */
@Command(name = "shelf", description = "Keep problems on a shelf, a plain-text file.")
final class ShelfCommand implements Runnable {

  private final Console console;
  private final Desk desk;

  @Option(
      names = "--shelf",
      paramLabel = "FILE",
      scope = picocli.CommandLine.ScopeType.INHERIT,
      description = "The file (${DEFAULT-VALUE}).",
      defaultValue = "shelf.txt")
  Path shelf = Path.of("shelf.txt");

  ShelfCommand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
  }

  @Override
  public void run() {
    console.out().println("Say shelf add or shelf find; --help tells how.");
  }

  @Command(name = "add", description = "Put a problem on the shelf, unless a twin stands there.")
  int add(
      @Option(names = "--polynomial", required = true, description = "The polynomial.")
          String polynomial,
      @Option(names = "--find", required = true, description = "The ask.") String find)
      throws IOException {
    try {
      List<ShelfTwin> twins = desk.shelve(shelf, Statement.of(polynomial, find));
      boolean there = twins.stream().anyMatch(twin -> twin.twin().relation().isRefused());
      console.out().println(there ? "Not added:" : "Added.");
      twins.forEach(
          twin ->
              console
                  .out()
                  .printf(
                      "   line %d: %s: %s%n",
                      twin.entry().line(), twin.twin().words(), twin.entry().text()));
      return (there ? ExitStatus.NOT_SINGLE : ExitStatus.DONE).code();
    } catch (UnreadableException unreadable) {
      console.err().println(ErrorCaret.write(unreadable.refusal()));
      return ExitStatus.UNREADABLE.code();
    }
  }

  @Command(name = "find", description = "Problems on the shelf in whose line all words occur.")
  int find(@Parameters(arity = "0..*", description = "Words.") List<String> words)
      throws IOException {
    List<ShelfEntry> found = desk.onShelf(shelf, words == null ? List.of() : words);
    found.forEach(entry -> console.out().printf("%4d  %s%n", entry.line(), entry.text()));
    return ExitStatus.DONE.code();
  }
}
