package rootwright.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rootwright.composing.blueprint.Composition;
import rootwright.desk.Desk;
import rootwright.desk.table.ComposersTable.Attention;
import rootwright.working.problem.Statement;

/** {@code ./rootwright sibling}: the same kind of problem with other numbers. */
@Command(
    name = "sibling",
    description =
        "Problems of the same kind and level with other numbers and other keys, for versions of a"
            + " paper or for a retake.")
final class SiblingCommand implements Callable<Integer> {

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

  @Option(names = "--many", description = "How many (${DEFAULT-VALUE}).", defaultValue = "2")
  int many;

  @Option(
      names = "--seed",
      description = "What chance starts from (${DEFAULT-VALUE}).",
      defaultValue = "1")
  long seed;

  @Option(names = "--harder", description = "One of the next level instead of the same one.")
  boolean harder;

  @Mixin OutputOptions output = new OutputOptions();

  SiblingCommand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
  }

  @Override
  public Integer call() throws IOException {
    return OrderErrors.told(
        console,
        "",
        () -> {
          Statement statement = new Statement(polynomial, find, List.of(), Optional.empty());
          Composition composition =
              harder
                  ? desk.table().harder(statement, Set.of(), seed, Attention.NONE)
                  : desk.table().siblings(statement, many, seed, Attention.NONE);
          new CompositionPrinter(console, output.form()).print(composition);
          return composition.problems().isEmpty() ? ExitStatus.NOT_SINGLE : ExitStatus.DONE;
        });
  }
}
