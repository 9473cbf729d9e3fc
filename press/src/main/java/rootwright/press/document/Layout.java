package rootwright.press.document;

/**
 * The sheet and the size of the text on it.
 *
 * @param format the sheet
 * @param size the running text
 */
public record Layout(PageFormat format, TextSize size) {

  /** A4 at 11 points. */
  public static final Layout USUAL = new Layout(PageFormat.A4, TextSize.REGULAR);

  /** The same sheet with text of another size. */
  public Layout withSize(TextSize other) {
    return new Layout(format, other);
  }
}
