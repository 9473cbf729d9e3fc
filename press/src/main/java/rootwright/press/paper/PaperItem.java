package rootwright.press.paper;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.composing.hint.HintLadder;
import rootwright.composing.hint.Rung;
import rootwright.composing.level.Level;
import rootwright.press.document.Piece;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Solution;

/**
 * An item of a paper.
 *
 * @param task what it asks for
 * @param points what it is worth, at least 1
 * @param hints from the first to the last before the solution; may be none
 * @param level how hard it is estimated to be, in logits; empty if nobody has estimated it
 */
public record PaperItem(
    Task task, int points, List<List<Piece>> hints, Optional<BigDecimal> level) {

  /**
   * @throws IllegalArgumentException if the points are below 1
   */
  public PaperItem {
    hints = hints.stream().map(List::copyOf).toList();
    if (points < 1) {
      throw new IllegalArgumentException("an item worth %d points".formatted(points));
    }
  }

  /** An item without hints and estimate. */
  public static PaperItem of(Task task, int points) {
    return new PaperItem(task, points, List.of(), Optional.empty());
  }

  /**
   * An item with everything the composer knows of its solution: the key, the hint ladder, the
   * estimated level.
   *
   * @param statement from which the solution was read
   */
  public static PaperItem worked(Statement statement, Solution solution, Form form, int points) {
    return new PaperItem(
        new Task.Find(statement, form, Optional.of(new Checked(statement, solution))),
        points,
        HintLadder.of(solution)
            .map(ladder -> ladder.rungs().stream().map(PaperItem::hint).toList())
            .orElse(List.of()),
        Level.of(solution).map(level -> hundredths(level.difficulty())));
  }

  private static List<Piece> hint(Rung rung) {
    return rung.line()
        .map(formula -> Piece.line(rung.words() + " ", formula))
        .orElseGet(() -> Piece.line(rung.words()));
  }

  private static BigDecimal hundredths(Rational value) {
    return new BigDecimal(value.numerator())
        .divide(new BigDecimal(value.denominator()), 2, RoundingMode.HALF_EVEN);
  }

  /** The same item asking for something else. */
  public PaperItem withTask(Task other) {
    return new PaperItem(other, points, hints, level);
  }
}
