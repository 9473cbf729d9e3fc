package rootwright.lesson.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.press.formula.Drawing;
import rootwright.press.formula.Engraver;
import rootwright.press.formula.FormulaScripts;
import rootwright.press.formula.Style;

/**
 * Which terms the product of two sums makes: a row for each term of one, a column for each of the
 * other. Equal products have the same frame: a box, a double underline, none.
 */
public final class ProductTable {

  private static final double SIDE = 470;
  private static final double LARGEST = 40;
  private static final double ROW = 74;

  private ProductTable() {}

  /** How high the table of this product is. */
  public static double height(MultivariatePolynomial left) {
    return ROW * (left.terms().size() + 1);
  }

  /** The table. */
  public static List<Mark> of(
      MultivariatePolynomial left, MultivariatePolynomial right, List<String> names) {
    List<Monomial> rows = List.copyOf(left.terms().descendingKeySet());
    List<Monomial> columns = List.copyOf(right.terms().descendingKeySet());
    double width = SIDE / (columns.size() + 1);
    List<Mark> marks = new ArrayList<>();
    marks.add(Mark.Stroke.line(0, ROW - 8, SIDE, ROW - 8, 3, Ink.RULE));
    marks.add(Mark.Stroke.line(width - 6, 0, width - 6, ROW * (rows.size() + 1), 3, Ink.RULE));
    for (int j = 0; j < columns.size(); j++) {
      cell(columns.get(j), names, (j + 1) * width, 0, width, 0, marks);
    }
    Map<List<Integer>, Integer> kinds = new LinkedHashMap<>();
    for (int i = 0; i < rows.size(); i++) {
      cell(rows.get(i), names, 0, (i + 1) * ROW, width, 0, marks);
      for (int j = 0; j < columns.size(); j++) {
        Monomial product = rows.get(i).times(columns.get(j));
        int kind = kinds.computeIfAbsent(orbit(product), fresh -> kinds.size());
        cell(product, names, (j + 1) * width, (i + 1) * ROW, width, kind, marks);
      }
    }
    return marks;
  }

  /** The exponents in descending order: what all images under renaming have in common. */
  private static List<Integer> orbit(Monomial monomial) {
    List<Integer> exponents = new ArrayList<>();
    for (int k = 0; k < monomial.length(); k++) {
      if (monomial.exponent(k) > 0) {
        exponents.add(monomial.exponent(k));
      }
    }
    exponents.sort(Comparator.reverseOrder());
    return exponents;
  }

  private static void cell(
      Monomial monomial,
      List<String> names,
      double x,
      double y,
      double width,
      int kind,
      List<Mark> marks) {
    Formula formula =
        PolynomialFormula.of(MultivariatePolynomial.term(Rational.ONE, monomial), names);
    Drawing drawing =
        Engraver.engrave(
            FormulaScripts.USUAL.latex().apply(formula),
            Style.TEXT,
            Math.min(LARGEST, width * 0.4));
    double left = x + (width - drawing.width()) / 2;
    double baseline = y + 46;
    marks.add(
        new Mark.Outline(drawing, left, baseline - drawing.height() + drawing.depth(), Ink.INK));
    if (kind == 1) {
      marks.add(
          new Mark.Box(
              left - 7, baseline - 38, drawing.width() + 14, 52, Mark.Fill.OPEN, Ink.FRESH));
    } else if (kind > 1) {
      for (int line = 0; line < 2; line++) {
        marks.add(
            Mark.Stroke.line(
                left,
                baseline + 13 + 6 * line,
                left + drawing.width(),
                baseline + 13 + 6 * line,
                3,
                Ink.STRUCK));
      }
    }
  }
}
