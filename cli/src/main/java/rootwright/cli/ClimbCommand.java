package rootwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rootwright.composing.climb.Climb;
import rootwright.desk.Desk;
import rootwright.desk.table.ComposersTable;

/** {@code ./rootwright climb}: from a read-off to a hard problem in five steps. */
@Command(
    name = "climb",
    description =
        "Five problems from a read-off to a hard one, each adding one idea to those"
            + " before it.")
final class ClimbCommand implements Callable<Integer> {

  private final Console console;
  private final Desk desk;

  @Option(
      names = "--degree",
      paramLabel = "N",
      description = "The degree (${DEFAULT-VALUE}).",
      defaultValue = "3")
  int degree;

  @Option(
      names = "--size",
      paramLabel = "N",
      description = "The largest coefficient by size (${DEFAULT-VALUE}).",
      defaultValue = "12")
  int size;

  @Option(
      names = "--kinds",
      split = ",",
      paramLabel = "KIND",
      description = "What may be asked after the read-off: value, letters, bound, … (value).")
  Set<String> kinds = Set.of();

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "What chance starts from (${DEFAULT-VALUE}).",
      defaultValue = "1")
  long seed;

  @Option(
      names = "--avoid",
      split = ",",
      paramLabel = "FILE",
      description = "Shelves or lists; nothing in them, and no twin of it, is composed.")
  List<Path> avoid = List.of();

  @Mixin OutputOptions output = new OutputOptions();

  ClimbCommand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
  }

  @Override
  public Integer call() throws IOException {
    return OrderErrors.told(
        console,
        "",
        () -> {
          Climb climb =
              desk.table()
                  .climb(
                      degree,
                      size,
                      kinds,
                      seed,
                      desk.table().fingerprints(avoid),
                      ComposersTable.Attention.NONE);
          new CompositionPrinter(console, output.form()).print(climb);
          return climb.missing().isEmpty() ? ExitStatus.DONE : ExitStatus.NOT_SINGLE;
        });
  }
}
