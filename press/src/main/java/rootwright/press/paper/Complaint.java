package rootwright.press.paper;

/**
 * Why a paper cannot go on, in one plain sentence.
 *
 * @param version the mark of the version concerned, empty for the whole paper
 * @param item the number of the item concerned, 0 for the whole version
 * @param text the sentence
 */
public record Complaint(String version, int item, String text) {

  /** The sentence with the place it speaks of. */
  public String sentence() {
    String where = version.isEmpty() ? "" : "Version " + version + ", ";
    if (item > 0) {
      return where + "item " + item + ": " + text;
    }
    return where.isEmpty() ? text : where.replace(", ", ": ") + text;
  }
}
