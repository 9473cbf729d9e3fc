package rootwright.working.ask;

/** Which of the real roots are meant. */
public enum RealRange {
  ALL("real roots", "real"),
  POSITIVE("positive roots", "positive"),
  NEGATIVE("negative roots", "negative");

  private final String word;
  private final String adjective;

  RealRange(String word, String adjective) {
    this.word = word;
    this.adjective = adjective;
  }

  /** The ask word. */
  public String word() {
    return word;
  }

  /** What such a root is called: positive. */
  public String adjective() {
    return adjective;
  }
}
