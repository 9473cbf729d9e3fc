package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.step.Idea;

/** The lines that put a number into P or one of its derivatives. */
final class PolynomialValues {

  private PolynomialValues() {}

  /** Writes {@code P(3) = 135 − 90 + 3 − 4 = 44} and gives the value. */
  static Rational write(Lines lines, String function, Polynomial polynomial, Rational point) {
    Rational value = polynomial.at(point);
    lines.add(
        Idea.EVALUATE,
        "put in " + UnicodeWriter.write(Formula.number(point)),
        applied(function, point),
        termByTerm(polynomial, point),
        Formula.number(value));
    return value;
  }

  /** {@code P(3)}. */
  static Formula applied(String function, Rational point) {
    return new Formula.Application(function, List.of(Formula.number(point)));
  }

  private static Formula termByTerm(Polynomial polynomial, Rational point) {
    List<Formula> terms = new ArrayList<>();
    for (int k = polynomial.degree(); k >= 0; k--) {
      Rational term = polynomial.coefficient(k).times(point.power(k));
      if (!term.isZero()) {
        Formula size = Formula.number(term.absolute());
        terms.add(term.signum() < 0 ? new Formula.Negative(size) : size);
      }
    }
    return Formula.sum(terms);
  }
}
