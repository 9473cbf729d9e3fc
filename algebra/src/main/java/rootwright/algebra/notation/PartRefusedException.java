package rootwright.algebra.notation;

/**
 * Thrown inside this package where a part of a formula cannot be evaluated; whoever knows the text
 * turns it into a {@link Refusal} with a place.
 */
final class PartRefusedException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String code;
  private final transient Formula part;
  private final String expected;

  PartRefusedException(String code, String sentence, Formula part, String expected) {
    super(sentence, null, false, false);
    this.code = code;
    this.part = part;
    this.expected = expected;
  }

  /** The refusal for a text in which the part stands at some place. */
  UnreadableException in(String input, int at, String mend) {
    return new UnreadableException(new Refusal(code, sentence(), input, at, expected, mend));
  }

  /** The refusal where no text was typed: the formula written plainly is the text. */
  UnreadableException in(Formula whole) {
    String input = PlainWriter.write(whole);
    return in(input, Math.max(0, input.indexOf(PlainWriter.write(part))), "");
  }

  Formula part() {
    return part;
  }

  private String sentence() {
    String message = getMessage();
    return message == null ? code : message;
  }
}
