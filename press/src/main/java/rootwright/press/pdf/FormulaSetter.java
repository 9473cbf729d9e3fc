package rootwright.press.pdf;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Formula;
import rootwright.press.formula.Breaks;
import rootwright.press.formula.Drawing;
import rootwright.press.formula.Engraver;
import rootwright.press.formula.FormulaScripts;
import rootwright.press.formula.Style;
import rootwright.press.output.UnprintableException;

/** Sets the formulas of one document: draws them, breaks the wide ones, shrinks what must be. */
final class FormulaSetter {

  /** Below half its size a formula is not readable any more. */
  private static final double LEAST_SCALE = 0.5;

  private final FormulaScripts scripts;
  private final double size;
  private final Map<Drawn, Drawing> drawn = new HashMap<>();

  /** What is drawn once only in a document. */
  private record Drawn(String latex, Style style) {}

  FormulaSetter(FormulaScripts scripts, double size) {
    this.scripts = scripts;
    this.size = size;
  }

  FormulaSetter withSize(double other) {
    return new FormulaSetter(scripts, other);
  }

  /**
   * The formula in pieces that are no wider than the line; a line may end after each.
   *
   * @param wholeUpTo a formula, or a part of one, up to this width is not broken
   * @param line the width of a line
   * @throws UnprintableException if a part that cannot be broken is more than twice as wide
   */
  List<SetFormula> pieces(Formula formula, Style style, double wholeUpTo, double line) {
    Drawing whole = draw(formula, style);
    if (whole.width() <= wholeUpTo) {
      return List.of(set(formula, whole, 1));
    }
    List<SetFormula> pieces = new ArrayList<>();
    for (Formula piece : Breaks.pieces(formula, part -> draw(part, style).width() <= wholeUpTo)) {
      Drawing drawing = draw(piece, style);
      double scale = Math.min(1, line / drawing.width());
      if (scale < LEAST_SCALE) {
        throw new UnprintableException(
            "This formula is %.1f times as wide as a line and can be broken nowhere: %s"
                .formatted(1 / scale, shortened(scripts.unicode().apply(piece))));
      }
      pieces.add(set(piece, drawing, scale));
    }
    return pieces;
  }

  /** The width of a formula that is not broken. */
  double width(Formula formula, Style style) {
    return draw(formula, style).width();
  }

  private Drawing draw(Formula formula, Style style) {
    return drawn.computeIfAbsent(
        new Drawn(scripts.latex().apply(formula), style),
        key -> Engraver.engrave(key.latex(), style, size));
  }

  private SetFormula set(Formula formula, Drawing drawing, double scale) {
    return new SetFormula(
        drawing,
        Breaks.leadingRoom(formula) * size / 18,
        scale,
        scripts.linear().apply(formula).strip(),
        scripts.spoken().apply(formula).strip());
  }

  private static String shortened(String text) {
    return text.length() <= 60 ? text : text.substring(0, 57) + "…";
  }
}
