package rootwright.working.values;

import java.util.function.IntFunction;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.working.route.NamedForm;

/**
 * One symmetric value that is given: shown = over/under = value, in e_1, e_2, …, where e_k is
 * unknown k − 1.
 *
 * @param relation what was typed
 * @param shown the symmetric expression; the difference of the sides where both hold letters
 * @param over the numerator in the elementary symmetric polynomials
 * @param under the denominator, not zero
 * @param value the number given for it
 */
record GivenValue(
    Formula relation,
    Formula shown,
    MultivariatePolynomial over,
    MultivariatePolynomial under,
    Rational value) {

  /** What must be zero. */
  MultivariatePolynomial equation() {
    return over.minus(under.times(value));
  }

  /** Whether the elementary polynomials stand in a denominator. */
  boolean isFraction() {
    return !under.isConstant();
  }

  /** Whether it is the value of this elementary polynomial itself. */
  boolean isElementary(int k) {
    return under.equals(MultivariatePolynomial.ONE)
        && over.equals(MultivariatePolynomial.unknown(k - 1));
  }

  /** over/under with names for the elementary polynomials. */
  Formula written(IntFunction<Formula> name) {
    Formula above = new NamedForm(over, name).written();
    if (under.isConstant()) {
      Rational number = under.coefficient(Monomial.ONE);
      return number.isOne() ? above : above.over(Formula.number(number));
    }
    return above.over(new NamedForm(under, name).written());
  }
}
