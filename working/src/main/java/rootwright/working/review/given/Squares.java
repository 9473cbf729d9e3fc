package rootwright.working.review.given;

import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/**
 * Whether a polynomial of degree 2 is a sum of squares with positive factors, by completing the
 * square in one unknown after another (Lagrange).
 */
final class Squares {

  private Squares() {}

  static boolean isSum(MultivariatePolynomial polynomial) {
    if (polynomial.isConstant()) {
      return polynomial.coefficient(Monomial.ONE).signum() >= 0;
    } else if (polynomial.degree() != 2) {
      return false;
    }
    int k = polynomial.unknowns() - 1;
    Rational lead = polynomial.coefficient(Monomial.power(k, 2));
    if (lead.signum() < 0 || (lead.isZero() && polynomial.degreeIn(k) > 0)) {
      return false;
    } else if (lead.isZero()) {
      return isSum(polynomial);
    }
    MultivariatePolynomial half =
        polynomial.coefficientsIn(k).get(1).times(Rational.of(1, 2)).times(lead.reciprocal());
    MultivariatePolynomial square =
        MultivariatePolynomial.unknown(k).plus(half).power(2).times(lead);
    return isSum(polynomial.minus(square));
  }
}
