package rootwright.cli;

import java.io.IOException;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.paper.AnswerForm;
import rootwright.desk.paper.FiledItem;
import rootwright.desk.paper.PaperFile;
import rootwright.press.paper.BlockedException;
import rootwright.working.problem.Statement;

/** {@code ./rootwright paper edit}: changes an item. */
@Command(
    name = "edit",
    description =
        "Change an item of a paper that is not frozen. A changed statement makes its key stale.")
final class PaperEditCommand extends PaperFileCommand {

  @Option(
      names = "--item",
      required = true,
      paramLabel = "NAME",
      description = "The name of the item in the file, such as 3 or 3B.")
  String item = "";

  @Option(names = "--given", paramLabel = "TEXT", description = "Another polynomial.")
  String given = "";

  @Option(names = "--find", paramLabel = "TEXT", description = "Another ask.")
  String find = "";

  @Option(names = "--form", description = "Another form: short, choice or integer.")
  String form = "";

  @Option(names = "--points", description = "Other points.")
  int points;

  @Option(
      names = "--options",
      split = ",",
      paramLabel = "VALUE",
      description = "Other options, ascending; the word new has them chosen at the next check.")
  List<String> options = List.of();

  PaperEditCommand(Console console) {
    super(console);
  }

  @Override
  void act(PaperFile file)
      throws UnreadableException, BlockedException, IOException, InterruptedException {
    keep(file.read().edited(item, this::changed), file);
  }

  private FiledItem changed(FiledItem old) {
    FiledItem worth = points > 0 ? old.worth(points) : old;
    if (!(worth instanceof FiledItem.Problem problem)) {
      return worth;
    }
    Statement before = problem.statement();
    FiledItem.Problem other =
        problem.withStatement(
            new Statement(
                given.isBlank() ? before.polynomial() : given,
                find.isBlank() ? before.find() : find,
                before.roots(),
                before.unknown()));
    if (!form.isBlank()) {
      other = other.withForm(AnswerForm.named(form));
    }
    if (!options.isEmpty()) {
      other = other.withOptions(options.equals(List.of("new")) ? List.of() : options);
    }
    return other;
  }
}
