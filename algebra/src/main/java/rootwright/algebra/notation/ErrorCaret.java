package rootwright.algebra.notation;

/** A refusal as three lines: what is wrong, the offending text, and a caret below the place. */
public final class ErrorCaret {

  /** How much of a long text is shown. */
  private static final int WINDOW = 72;

  private static final int BEFORE = 44;

  private ErrorCaret() {}

  /**
   * The lines {@code error: …}, the text and the caret, without a final line end. A long text is
   * shown in part; characters that show nothing are shown by a sign for them. A fourth line gives
   * the mend, if there is one.
   */
  public static String write(Refusal refusal) {
    int[] points = refusal.input().codePoints().toArray();
    int at = Math.max(0, Math.min(refusal.at(), points.length));
    int from =
        points.length <= WINDOW ? 0 : Math.max(0, Math.min(at - BEFORE, points.length - WINDOW));
    int to = Math.min(points.length, from + WINDOW);
    StringBuilder line = new StringBuilder("  ").append(from > 0 ? "…" : "");
    int caret = line.length();
    int columns = caret;
    for (int k = from; k < to; k++) {
      if (k == at) {
        caret = columns;
      }
      line.appendCodePoint(visible(points[k]));
      columns++;
    }
    if (at >= to) {
      caret = columns;
    }
    line.append(to < points.length ? "…" : "");
    String expected = refusal.expected().isEmpty() ? "" : " expected " + refusal.expected();
    String mend =
        refusal.mend().isEmpty() || refusal.mend().length() > WINDOW
            ? ""
            : System.lineSeparator() + "  perhaps: " + refusal.mend();
    return "error: "
        + refusal.text()
        + System.lineSeparator()
        + line
        + System.lineSeparator()
        + " ".repeat(caret)
        + "^"
        + expected
        + mend;
  }

  /** The character itself, or a picture of a control character, or a box. */
  private static int visible(int point) {
    if (point < 0x20) {
      return 0x2400 + point;
    }
    boolean hidden =
        point == 0x7F
            || (point >= 0x80 && point < 0xA0)
            || !Character.isDefined(point)
            || Character.getType(point) == Character.FORMAT
            || Character.getType(point) == Character.SURROGATE
            || Character.getType(point) == Character.LINE_SEPARATOR
            || Character.getType(point) == Character.PARAGRAPH_SEPARATOR
            || Character.getType(point) == Character.NON_SPACING_MARK;
    return hidden ? 0x25AF : point;
  }
}
