package rootwright.desk.paper;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.UnreadableException;
import rootwright.composing.hint.HintLadder;
import rootwright.composing.level.Level;
import rootwright.composing.option.Choices;
import rootwright.press.document.Piece;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Checker;
import rootwright.press.paper.Content;
import rootwright.press.paper.Form;
import rootwright.press.paper.Option;
import rootwright.press.paper.Paper;
import rootwright.press.paper.PaperItem;
import rootwright.press.paper.Task;
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
    List<List<Piece>> hints =
        HintLadder.of(solution).stream()
            .flatMap(ladder -> ladder.rungs().stream())
            .map(rung -> Piece.line(rung.text()))
            .toList();
    Optional<BigDecimal> level =
        Level.of(solution)
            .map(
                found ->
                    new BigDecimal(found.difficulty().numerator())
                        .divide(
                            new BigDecimal(found.difficulty().denominator()),
                            2,
                            RoundingMode.HALF_UP));
    return new PaperItem(
        new Task.Find(statement, form(order.form(), solution), Optional.empty()),
        order.points(),
        hints,
        level);
  }

  private static Form form(String name, Solution solution) {
    return switch (name) {
      case "short" -> new Form.Written();
      case "integer" -> new Form.WholeNumber();
      case "choice" ->
          new Form.Choice(
              Choices.of(solution, Choices.USUAL).options().stream()
                  .map(option -> new Option(option.value(), option.slips()))
                  .toList());
      default ->
          throw new IllegalArgumentException(
              "there is no form “%s”; write short, choice or integer".formatted(name));
    };
  }
}
