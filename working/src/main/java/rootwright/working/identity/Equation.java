package rootwright.working.identity;

import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;

/**
 * left = right between rational expressions in numbered letters.
 *
 * @param difference left − right, its denominator holding every denominator of both sides
 */
record Equation(Formula left, Formula right, RationalFunction difference) {

  /** The relation as it was typed. */
  Formula relation() {
    return Formula.equation(left, right);
  }

  /** What must be zero once denominators are cleared. */
  MultivariatePolynomial cleared() {
    return difference.numerator();
  }

  /** left − right, without a right side 0. */
  Formula shownDifference() {
    return right.equals(Formula.number(0)) ? left : left.minus(right);
  }
}
