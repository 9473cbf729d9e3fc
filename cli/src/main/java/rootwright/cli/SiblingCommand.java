package rootwright.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rootwright.algebra.notation.ErrorCaret;
import rootwright.algebra.notation.UnreadableException;
import rootwright.composing.blueprint.Composition;
import rootwright.composing.blueprint.ContradictoryBlueprintException;
import rootwright.desk.Desk;
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

  @Option(names = "--json", description = "One JSON object.")
  boolean json;

  SiblingCommand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try {
      Statement statement = new Statement(polynomial, find, List.of(), Optional.empty());
      Composition composition = desk.siblings(statement, many, seed);
      new CompositionPrinter(console, json).print(composition);
      return (composition.problems().isEmpty() ? ExitStatus.NOT_SINGLE : ExitStatus.DONE).code();
    } catch (UnreadableException unreadable) {
      console.err().println(ErrorCaret.write(unreadable.refusal()));
      return ExitStatus.UNREADABLE.code();
    } catch (ContradictoryBlueprintException contradictory) {
      contradictory.contradictions().forEach(line -> console.err().println("error: " + line));
      return ExitStatus.UNREADABLE.code();
    }
  }
}
