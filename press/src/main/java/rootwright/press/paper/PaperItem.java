package rootwright.press.paper;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import rootwright.press.document.Piece;

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

  /** The same item asking for something else. */
  public PaperItem withTask(Task other) {
    return new PaperItem(other, points, hints, level);
  }
}
