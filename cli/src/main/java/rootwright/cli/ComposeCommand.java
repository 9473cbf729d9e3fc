package rootwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rootwright.algebra.notation.ErrorCaret;
import rootwright.algebra.notation.UnreadableException;
import rootwright.composing.blueprint.Composition;
import rootwright.composing.blueprint.ContradictoryBlueprintException;
import rootwright.desk.Desk;

/** {@code ./rootwright compose}: fresh problems by an order. */
@Command(
    name = "compose",
    description =
        "Compose fresh problems: every one worked by all routes and both checks, with believable"
            + " wrong options, a level and hints. The same order and seed give the same problems.")
final class ComposeCommand implements Callable<Integer> {

  private final Console console;
  private final Desk desk;

  @Mixin BlueprintOptions order = new BlueprintOptions();

  @Option(
      names = "--avoid",
      paramLabel = "FILE",
      description = "A shelf; nothing on it, and no twin of it, is composed.")
  @Nullable Path avoid;

  @Option(names = "--json", description = "One JSON object.")
  boolean json;

  ComposeCommand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
  }

  @Override
  public Integer call() throws IOException {
    try {
      Set<String> known = avoid == null ? Set.of() : desk.fingerprints(avoid);
      Composition composition = desk.compose(order.blueprint(), known);
      new CompositionPrinter(console, json).print(composition);
      return (composition.problems().isEmpty() ? ExitStatus.NOT_SINGLE : ExitStatus.DONE).code();
    } catch (UnreadableException unreadable) {
      console.err().println(ErrorCaret.write(unreadable.refusal()));
      return ExitStatus.UNREADABLE.code();
    } catch (ContradictoryBlueprintException contradictory) {
      contradictory.contradictions().forEach(line -> console.err().println("error: " + line));
      return ExitStatus.UNREADABLE.code();
    } catch (IllegalArgumentException wish) {
      console.err().println("error: " + wish.getMessage());
      return ExitStatus.UNREADABLE.code();
    }
  }
}
