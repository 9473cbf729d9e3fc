package rootwright.working.route;

import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/** A polynomial with a number put for its letter, before it is worked out. */
final class PutIn {

  private PutIn() {}

  /** {@code 2³ − 3·2² + 2} for x³ − 3x² + x at 2; powers of 1, −1 and 0 are worked out at once. */
  static Formula of(Polynomial polynomial, Rational number) {
    Combination sum = new Combination();
    for (int k = polynomial.degree(); k >= 1; k--) {
      Rational coefficient = polynomial.coefficient(k);
      if (number.absolute().isOne()) {
        sum.plus(coefficient.times(number.power(k)));
      } else if (!number.isZero()) {
        sum.plus(coefficient, Combination.power(Formula.number(number), k));
      }
    }
    return sum.plus(polynomial.coefficient(0)).formula();
  }
}
