package rootwright.composing.hint;

import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;

/**
 * One hint.
 *
 * @param words what is said
 * @param line the one line of the working that is shown with it, if any
 */
public record Rung(String words, Optional<Formula> line) {

  /** Words alone. */
  static Rung of(String words) {
    return new Rung(words, Optional.empty());
  }

  /** The whole hint as one text, the line written in Unicode. */
  public String text() {
    return line.map(formula -> words + " " + UnicodeWriter.write(formula)).orElse(words);
  }
}
