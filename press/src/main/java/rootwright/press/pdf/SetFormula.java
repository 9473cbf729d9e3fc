package rootwright.press.pdf;

import rootwright.press.formula.Drawing;

/**
 * A formula ready to be placed.
 *
 * @param drawing its outline
 * @param scale 1, or less for a formula that had to be made smaller to fit
 * @param linear what the text layer says
 * @param spoken what is read aloud
 */
record SetFormula(Drawing drawing, double scale, String linear, String spoken) {

  double width() {
    return drawing.width() * scale;
  }

  double height() {
    return drawing.height() * scale;
  }

  double depth() {
    return drawing.depth() * scale;
  }
}
