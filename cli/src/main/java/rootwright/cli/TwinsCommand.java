package rootwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rootwright.bank.shelf.ShelfTwin;
import rootwright.composing.twin.Twin;
import rootwright.desk.Desk;
import rootwright.desk.contract.TwinContract;
import rootwright.working.problem.Statement;

/** {@code ./rootwright twins}: whether a problem is another one in other clothes. */
@Command(
    name = "twins",
    description =
        "Say how two problems are the same in other clothes (scaled, mirrored, reversed, renamed) or"
            + " shifted, or which problems of a shelf a problem is related to.")
final class TwinsCommand implements Callable<Integer> {

  private final Console console;
  private final Desk desk;

  @Option(
      names = "--polynomial",
      required = true,
      paramLabel = "TEXT",
      description = "The polynomial.")
  String polynomial = "";

  @Option(names = "--find", required = true, paramLabel = "TEXT", description = "The ask.")
  String find = "";

  @Option(
      names = "--earlier-polynomial",
      paramLabel = "TEXT",
      description = "The polynomial of an earlier problem.")
  @Nullable String earlierPolynomial;

  @Option(
      names = "--earlier-find",
      paramLabel = "TEXT",
      description = "The ask of the earlier problem; the same if left out.")
  @Nullable String earlierFind;

  @Option(names = "--shelf", paramLabel = "FILE", description = "A shelf of earlier problems.")
  @Nullable Path shelf;

  @Option(names = "--json", description = "One JSON object.")
  boolean json;

  TwinsCommand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
  }

  @Override
  public Integer call() throws IOException {
    if ((earlierPolynomial == null) == (shelf == null)) {
      console.err().println("error: write --earlier-polynomial or --shelf, to compare with");
      return ExitStatus.UNREADABLE.code();
    }
    return OrderErrors.told(
        console,
        "",
        () -> {
          Statement later = Statement.of(polynomial, find);
          if (shelf != null) {
            shelf(desk.table().relations(shelf, later));
          } else if (earlierPolynomial != null) {
            Statement earlier =
                Statement.of(earlierPolynomial, earlierFind == null ? find : earlierFind);
            pair(desk.table().relation(earlier, later));
          }
          return ExitStatus.DONE;
        });
  }

  private void pair(Optional<Twin> twin) {
    if (json) {
      console.out().println(TwinContract.of(twin));
    } else {
      console.out().println(twin.map(TwinContract::words).orElse("Not related."));
    }
  }

  private void shelf(List<ShelfTwin> twins) {
    if (json) {
      console.out().println(TwinContract.of(twins));
    } else if (twins.isEmpty()) {
      console.out().println("Not related to any problem of the shelf.");
    } else {
      twins.forEach(
          found ->
              console
                  .out()
                  .printf(
                      "line %d: %s   %s%n",
                      found.entry().line(),
                      TwinContract.words(found.twin()),
                      found.entry().text()));
    }
  }
}
