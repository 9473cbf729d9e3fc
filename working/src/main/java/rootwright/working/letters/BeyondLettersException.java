package rootwright.working.letters;

import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.problem.Statement;

/** Thrown inside this package where an expression cannot be worked out in the letters. */
final class BeyondLettersException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String sentence;

  BeyondLettersException(String sentence) {
    super(sentence);
    this.sentence = sentence;
  }

  /** What stands in the way, a clause without a full stop. */
  String sentence() {
    return sentence;
  }

  /** The refusal that the coach sees. */
  static UnreadableException refused(String clause, Statement statement) {
    return new UnreadableException(
        new Refusal(
            "beyond-letters",
            Character.toUpperCase(clause.charAt(0)) + clause.substring(1) + ".",
            statement.find(),
            0,
            "a smaller ask, or numbers for the letters",
            ""));
  }
}
