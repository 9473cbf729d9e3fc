package rootwright.working.composition;

import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * P(P(x)) = c with its two polynomials.
 *
 * @param ask what is asked
 * @param inner P, of degree 2 or more
 * @param unknown its letter
 */
record Composed(LevelAsk ask, Polynomial inner, String unknown) {

  /** Degree of P. */
  int degree() {
    return inner.degree();
  }

  /** P(x) − c, whose roots are the levels. */
  Polynomial levels() {
    return inner.minus(Polynomial.constant(ask.level()));
  }

  /** P(P(x)) − c, of degree n². */
  Polynomial whole() {
    return inner.compose(inner).minus(Polynomial.constant(ask.level()));
  }

  /** The sum or the product of the roots of P(P(x)) − c, with multiplicity. */
  Rational value() {
    return total(whole());
  }

  /** The sum or the product, as asked, of the roots of a polynomial: Viète. */
  Rational total(Polynomial p) {
    int n = p.degree();
    if (ask.total() == LevelAsk.Total.SUM) {
      return p.coefficient(n - 1).over(p.lead()).negate();
    }
    Rational product = p.coefficient(0).over(p.lead());
    return n % 2 == 0 ? product : product.negate();
  }
}
