package rootwright.lesson.plan;

import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.lesson.text.Phrase;

/**
 * A line of a lesson, ready to be shown and said.
 *
 * @param words what stands before the formula
 * @param shown the formula
 * @param because the reason at the line's end
 * @param said what is said
 * @param standing what is known of it
 * @param slip the wrong turning that lurks here
 */
public record LessonLine(
    Phrase words,
    Optional<Formula> shown,
    Phrase because,
    Phrase said,
    Standing standing,
    Optional<SlipNote> slip) {

  /** What is known of a line. */
  public enum Standing {
    /** Words that state or remind. */
    STATED,
    /** A computation that was confirmed. */
    CHECKED,
    /** An argument, which no computation confirms. */
    ARGUMENT
  }
}
