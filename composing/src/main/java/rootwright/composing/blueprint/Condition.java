package rootwright.composing.blueprint;

/**
 * A condition that a statement might need, such as "distinct" or "not zero".
 *
 * @param words the condition in a few words
 * @param standing whether the statement carries it
 * @param why where it stands, or why it is not needed
 */
public record Condition(String words, Standing standing, String why) {

  /** What became of a condition. */
  public enum Standing {
    /** It stands in the statement. */
    PUT_IN("put in"),
    /** It holds for this polynomial, so the statement need not say it. */
    SUPERFLUOUS("not needed");

    private final String words;

    Standing(String words) {
      this.words = words;
    }

    /** In two words. */
    public String words() {
      return words;
    }
  }

  /** The condition as a sentence: "distinct roots: not needed, the discriminant is 229". */
  public String sentence() {
    return "%s: %s, %s".formatted(words, standing.words(), why);
  }
}
