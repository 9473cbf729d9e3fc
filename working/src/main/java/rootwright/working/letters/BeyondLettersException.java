package rootwright.working.letters;

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
}
