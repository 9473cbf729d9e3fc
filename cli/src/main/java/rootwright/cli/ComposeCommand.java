package rootwright.cli;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rootwright.algebra.notation.ErrorCaret;
import rootwright.algebra.notation.UnreadableException;
import rootwright.composing.blueprint.Blueprint;
import rootwright.composing.blueprint.Composition;
import rootwright.composing.blueprint.ContradictoryBlueprintException;
import rootwright.desk.Desk;
import rootwright.desk.table.ComposersTable;
import rootwright.desk.table.UnreadableBlueprintException;

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
      names = "--show-blueprint",
      description = "Print the order as YAML, for --blueprint, and compose nothing.")
  boolean showBlueprint;

  @Option(names = "--json", description = "One JSON object.")
  boolean json;

  ComposeCommand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
  }

  @Override
  public Integer call() throws IOException {
    try {
      Blueprint blueprint = order.blueprint(desk);
      if (showBlueprint) {
        console.out().print(desk.table().blueprintAsYaml(blueprint));
        console.out().flush();
        return ExitStatus.DONE.code();
      }
      List<Path> avoid = blueprint.avoid().stream().map(Path::of).toList();
      Set<String> known = desk.table().fingerprints(avoid);
      Composition composition =
          desk.table().compose(blueprint, known, ComposersTable.Attention.NONE);
      new CompositionPrinter(console, json).print(composition);
      return (composition.problems().isEmpty() ? ExitStatus.NOT_SINGLE : ExitStatus.DONE).code();
    } catch (UnreadableException unreadable) {
      console.err().println(ErrorCaret.write(unreadable.refusal()));
      return ExitStatus.UNREADABLE.code();
    } catch (ContradictoryBlueprintException contradictory) {
      contradictory.contradictions().forEach(line -> console.err().println("error: " + line));
      return ExitStatus.UNREADABLE.code();
    } catch (UnreadableBlueprintException unreadable) {
      unreadable
          .faults()
          .forEach(
              fault -> console.err().println("error: " + order.file + ": " + fault.sentence()));
      return ExitStatus.UNREADABLE.code();
    } catch (NoSuchFileException missing) {
      console.err().println("error: no file can be read at " + missing.getFile());
      return ExitStatus.UNREADABLE.code();
    } catch (IllegalArgumentException wish) {
      console.err().println("error: " + wish.getMessage());
      return ExitStatus.UNREADABLE.code();
    }
  }
}
