package rootwright.press.pdf;

import rootwright.press.markup.Markup;

/**
 * A set formula as a formatting object: an outline on the baseline of the line, with its linear
 * text beneath in invisible letters, tagged as a formula with the spoken sentence.
 */
final class FormulaObject {

  /** A place where a line may end without a blank. */
  private static final String MAY_END = "\u200B";

  private FormulaObject() {}

  /** A tall formula gets this much of the size of the text above and below. */
  private static final double AIR = 0.16;

  static void write(SetFormula formula, Setting setting, Markup into) {
    double size = setting.page().size();
    double air = formula.height() > 1.5 * size ? AIR * size : 0;
    double left = formula.lead();
    double width = formula.drawing().width() - left;
    double height = formula.drawing().height() + 2 * air;
    double baseline = formula.drawing().height() - formula.drawing().depth();
    into.open(
        "fo:instream-foreign-object",
        "role",
        "Formula",
        "fox:alt-text",
        formula.spoken(),
        "alignment-adjust",
        Points.pt(-formula.depth() - air * formula.scale()),
        "content-width",
        Points.pt(formula.width()),
        "content-height",
        Points.pt(height * formula.scale()));
    into.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "width",
        Points.pt(width),
        "height",
        Points.pt(height),
        "viewBox",
        String.join(
            " ", Points.bare(left), Points.bare(-air), Points.bare(width), Points.bare(height)));
    if (!formula.linear().isEmpty()) {
      into.leaf(
          "text",
          formula.linear(),
          "x",
          Points.bare(left),
          "y",
          Points.bare(baseline),
          "font-family",
          setting.typeface().family(),
          "font-size",
          "8",
          "fill",
          "none",
          "textLength",
          Points.bare(width),
          "lengthAdjust",
          "spacingAndGlyphs");
    }
    into.empty("path", "d", formula.drawing().path());
    into.close().close();
  }

  /** The room before a piece: a blank of that width, which is dropped where a line ends. */
  static double room(SetFormula formula, Setting setting, Markup into) {
    if (formula.lead() == 0) {
      into.text(MAY_END);
      return 0;
    }
    double blank = setting.width(" ", Typeface.Cut.PLAIN);
    double size = setting.page().size() * formula.lead() / blank;
    into.leaf("fo:inline", " ", "font-size", Points.pt(size));
    return formula.lead();
  }
}
