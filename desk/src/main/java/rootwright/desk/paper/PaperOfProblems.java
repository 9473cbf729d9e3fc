package rootwright.desk.paper;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.UnreadableException;
import rootwright.composing.option.Choices;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Checker;
import rootwright.press.paper.Content;
import rootwright.press.paper.Form;
import rootwright.press.paper.Paper;
import rootwright.press.paper.PaperItem;
import rootwright.press.paper.Version;
import rootwright.press.paper.Versions;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Solution;

/** Makes a frozen paper of typed problems: options and hints found, every key checked. */
public final class PaperOfProblems {

  private static final String INSTRUCTION =
      "Roots are complex numbers, counted with multiplicity, unless said otherwise.";

  private final Checker checker;

  /** With the way to work a statement. */
  public PaperOfProblems(Checker checker) {
    this.checker = checker;
  }

  /**
   * Drafts, checks and freezes the paper.
   *
   * @throws UnreadableException if a problem cannot be read
   * @throws BlockedException if a problem does not fit its form or the paper is empty
   * @throws IllegalArgumentException if the form is unknown
   */
  public Paper frozen(PaperOrder order) throws UnreadableException, BlockedException {
    List<PaperItem> items = new ArrayList<>();
    for (Statement statement : order.problems()) {
      items.add(item(statement, order));
    }
    List<Version> versions =
        order.versions() <= 1
            ? List.of(new Version("", items))
            : Versions.reordered(items, order.versions(), order.seed());
    Content content =
        new Content(order.title(), order.language(), INSTRUCTION, order.date(), versions);
    return Paper.draft(content).checked(checker).frozen();
  }

  private PaperItem item(Statement statement, PaperOrder order) throws UnreadableException {
    Solution solution = checker.read(statement);
    return PaperItem.worked(statement, solution, form(order.form(), solution), order.points());
  }

  private static Form form(String name, Solution solution) {
    return switch (name) {
      case "short" -> new Form.Written();
      case "integer" -> new Form.WholeNumber();
      case "choice" -> Form.Choice.of(Choices.of(solution, Choices.USUAL));
      default ->
          throw new IllegalArgumentException(
              "there is no form “%s”; write short, choice or integer".formatted(name));
    };
  }
}
