package rootwright.working.route;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;

/** The lines that solve a quadratic, its two linear factors being what is checked. */
final class QuadraticLines {

  private QuadraticLines() {}

  /** Writes b² − 4ac and the linear factors, and gives the two roots, equal ones once. */
  static List<ExactValue> write(Lines lines, Problem problem, Polynomial quadratic) {
    Rational a = quadratic.coefficient(2);
    Rational b = quadratic.coefficient(1);
    Rational c = quadratic.coefficient(0);
    Rational square = b.times(b).minus(a.times(c).times(4));
    Rational middle = b.over(a.times(-2));
    Rational half = a.times(2).reciprocal();
    Formula written = PolynomialFormula.of(quadratic, problem.unknown());
    if (!b.isZero()) {
      lines.add(
          Idea.DISCRIMINANT,
          "the discriminant of " + UnicodeWriter.write(written),
          Formula.number(b)
              .power(2)
              .minus(
                  Combination.product(
                      List.of(Formula.number(4), Formula.number(a), Formula.number(c)))),
          Formula.number(square));
    }
    ExactValue one = QuadraticSurd.of(middle, half.negate(), square);
    ExactValue other = QuadraticSurd.of(middle, half, square);
    Formula factors =
        Combination.product(
            List.of(
                Formula.number(a),
                linear(problem, one.toFormula()),
                linear(problem, other.toFormula())));
    lines
        .in(problem.setting().withFree(problem.unknown()))
        .add(
            Idea.ARITHMETIC,
            b.isZero() ? "take the square root" : "the formula for quadratics",
            written,
            factors);
    return List.of(one, other).stream().distinct().toList();
  }

  private static Formula linear(Problem problem, Formula root) {
    Formula x = Formula.name(problem.unknown());
    if (root.equals(Formula.number(0))) {
      return x;
    } else if (root instanceof Formula.Negative negative) {
      return x.plus(negative.of());
    }
    return root instanceof Formula.Numeral numeral && numeral.value().signum() < 0
        ? x.plus(Formula.number(numeral.value().negate()))
        : x.minus(root);
  }
}
