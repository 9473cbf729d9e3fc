package rootwright.press.pdf;

import rootwright.press.formula.Drawing;

/**
 * A formula ready to be placed.
 *
 * @param drawing its outline
 * @param lead empty room at the left of the outline, in points, which is wanted only after another
 *     piece on the same line
 * @param scale 1, or less for a formula that had to be made smaller to fit
 * @param linear what the text layer says
 * @param spoken what is read aloud
 */
record SetFormula(Drawing drawing, double lead, double scale, String linear, String spoken) {

  /** Without the room before it. */
  double width() {
    return (drawing.width() - lead) * scale;
  }

  double height() {
    return drawing.height() * scale;
  }

  double depth() {
    return drawing.depth() * scale;
  }
}
