package rootwright.press.output;

/** Thrown where a format cannot hold what a document says; the message is for the coach. */
public final class UnprintableException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** With the sentence that is shown. */
  public UnprintableException(String sentence) {
    super(sentence);
  }

  /** With the sentence that is shown, and what caused it. */
  public UnprintableException(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
