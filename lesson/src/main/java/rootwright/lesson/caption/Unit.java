package rootwright.lesson.caption;

/**
 * What is never divided in a caption: a word, or a side of a formula.
 *
 * @param text as it stands in the caption
 * @param words how many words are spoken for it
 * @param formula whether it is a formula or a part of one
 * @param breakCost how bad it is to end a line after it, 0 at the end of a phrase
 */
public record Unit(String text, int words, boolean formula, int breakCost) {

  /** Whether a sentence ends with it. */
  public boolean endsSentence() {
    return text.endsWith(".") || text.endsWith("?") || text.endsWith("!");
  }
}
