package rootwright.working.review.given;

import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * An inequality in one unknown.
 *
 * @param difference left side less right side
 * @param sign how it compares with zero
 */
record Signs(Polynomial difference, Formula.Comparison sign) {

  static boolean allows(Formula.Comparison sign, int signum) {
    return switch (sign) {
      case LESS -> signum < 0;
      case AT_MOST -> signum <= 0;
      case GREATER -> signum > 0;
      case AT_LEAST -> signum >= 0;
      case NOT_EQUAL -> signum != 0;
      default -> signum == 0;
    };
  }

  boolean holdsAt(Rational point) {
    return allows(sign, difference.at(point).signum());
  }
}
