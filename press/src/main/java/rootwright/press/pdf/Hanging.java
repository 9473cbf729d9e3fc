package rootwright.press.pdf;

import rootwright.press.markup.Markup;

/**
 * Blocks with a marker that hangs to the left of the text, its right edge aligned with the markers
 * above. The marker is part of the first line, so that it shares its baseline.
 */
final class Hanging {

  private Hanging() {}

  /** How far the text is moved in for markers of this width. */
  static double indent(Setting setting, double widest) {
    return widest + gap(setting);
  }

  /**
   * Opens a block and writes its marker.
   *
   * @param widest the width of the widest marker
   */
  static void open(
      Setting setting,
      double widest,
      String marker,
      Typeface.Cut cut,
      String spaceBefore,
      Markup into) {
    double indent = indent(setting, widest);
    into.open(
        "fo:block",
        "start-indent",
        "inherited-property-value(start-indent) + " + Points.pt(indent),
        "text-indent",
        Points.pt(-indent),
        "space-before",
        spaceBefore);
    Leaders.room(Math.max(0, widest - setting.width(marker, cut)), into);
    into.leaf("fo:inline", marker, "font-weight", cut == Typeface.Cut.BOLD ? "bold" : "normal");
    Leaders.room(gap(setting), into);
  }

  private static double gap(Setting setting) {
    return 0.6 * setting.page().size();
  }
}
