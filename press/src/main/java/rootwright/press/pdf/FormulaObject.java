package rootwright.press.pdf;

import rootwright.press.markup.Markup;

/**
 * A set formula as a formatting object: an outline on the baseline of the line, with its linear
 * text beneath in invisible letters, tagged as a formula with the spoken sentence.
 */
final class FormulaObject {

  private FormulaObject() {}

  static void write(SetFormula formula, Typeface typeface, Markup into) {
    String width = Points.bare(formula.drawing().width());
    String height = Points.bare(formula.drawing().height());
    double baseline = formula.drawing().height() - formula.drawing().depth();
    into.open(
        "fo:instream-foreign-object",
        "role",
        "Formula",
        "fox:alt-text",
        formula.spoken(),
        "alignment-adjust",
        Points.pt(-formula.depth()),
        "content-width",
        Points.pt(formula.width()),
        "content-height",
        Points.pt(formula.height()));
    into.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "width",
        width + "pt",
        "height",
        height + "pt",
        "viewBox",
        "0 0 " + width + " " + height);
    if (!formula.linear().isEmpty()) {
      into.leaf(
          "text",
          formula.linear(),
          "x",
          "0",
          "y",
          Points.bare(baseline),
          "font-family",
          typeface.family(),
          "font-size",
          "8",
          "fill",
          "none",
          "textLength",
          width,
          "lengthAdjust",
          "spacingAndGlyphs");
    }
    into.empty("path", "d", formula.drawing().path());
    into.close().close();
  }
}
