package rootwright.composing.scan.candidate;

import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/** What happens to an expression in the roots when every root changes its sign. */
public enum Parity {
  /** The value stays: Σ r². */
  EVEN,
  /** The value changes its sign: Σ r³. */
  ODD,
  /** Neither holds for all roots: Σ (r² + r). */
  NEITHER;

  /** The parity of a polynomial in e₁, e₂, …, unknown k − 1 being e_k, which has k factors. */
  static Parity of(MultivariatePolynomial elementary) {
    boolean even = true;
    boolean odd = true;
    for (Monomial monomial : elementary.terms().keySet()) {
      int weight = 0;
      for (int k = 0; k < monomial.length(); k++) {
        weight += (k + 1) * monomial.exponent(k);
      }
      even &= weight % 2 == 0;
      odd &= weight % 2 == 1;
    }
    return even ? EVEN : odd ? ODD : NEITHER;
  }

  /** The parity of a quotient of expressions with these parities. */
  Parity over(Parity divisor) {
    if (this == NEITHER || divisor == NEITHER) {
      return NEITHER;
    }
    return this == divisor ? EVEN : ODD;
  }
}
