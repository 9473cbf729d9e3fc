package rootwright.press.pdf;

import rootwright.press.document.Layout;

/**
 * The measures of a page, in points.
 *
 * @param width of the sheet
 * @param height of the sheet
 * @param side margin at the left and the right
 * @param end margin above and below the running text
 * @param size of the text
 */
record Page(double width, double height, double side, double end, double size) {

  /**
   * The page of a layout: lines of about 85 letters at 11 points, narrow margins in large print.
   */
  static Page of(Layout layout) {
    double side = layout.size().isLargePrint() ? 18 : 24;
    return new Page(
        layout.format().width() * Points.A_MILLIMETRE,
        layout.format().height() * Points.A_MILLIMETRE,
        side * Points.A_MILLIMETRE,
        22 * Points.A_MILLIMETRE,
        layout.size().points());
  }

  Page withSize(double other) {
    return new Page(width, height, side, end, other);
  }

  /** The width of a line of text. */
  double measure() {
    return width - 2 * side;
  }

  /** The height of the text on a page. */
  double depth() {
    return height - 2 * end;
  }

  /** The room for one line of handwriting: 12 millimetres, more where the print is large. */
  double handwriting() {
    return 12 * Points.A_MILLIMETRE * Math.max(1, size / 14);
  }
}
