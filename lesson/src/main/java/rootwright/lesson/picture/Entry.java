package rootwright.lesson.picture;

import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.lesson.text.Phrase;

/**
 * A line as it comes onto a board.
 *
 * @param words before the formula
 * @param formula on its own row if the words do not leave room for it
 * @param because the reason at the end
 * @param tick what stands in front of it
 * @param note what stands beside it, in the margin
 * @param label what the line says, in words
 */
public record Entry(
    Phrase words,
    Optional<Formula> formula,
    Phrase because,
    Tick tick,
    Optional<Note> note,
    String label) {

  /** What stands in front of a line. */
  public enum Tick {
    NOTHING,
    /** A tick: computed and confirmed. */
    CHECKED,
    /** An opening quotation mark: argued. */
    ARGUED
  }

  /**
   * A warning in the margin.
   *
   * @param text in words
   * @param value where the wrong turning leads
   */
  public record Note(String text, Formula value) {}
}
