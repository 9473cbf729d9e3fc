package rootwright.press.document;

/** The size of the sheet, upright. Measures: ISO 216 for A4; 8.5 by 11 inches for Letter. */
public enum PageFormat {
  /** 210 by 297 millimetres. */
  A4(210.0, 297.0),
  /** 215.9 by 279.4 millimetres. */
  LETTER(215.9, 279.4);

  private final double width;
  private final double height;

  PageFormat(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** In millimetres. */
  public double width() {
    return width;
  }

  /** In millimetres. */
  public double height() {
    return height;
  }
}
