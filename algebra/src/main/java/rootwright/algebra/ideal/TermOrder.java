package rootwright.algebra.ideal;

import java.util.Comparator;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/** The graded reverse lexicographic order of monomials, and what it makes of them. */
final class TermOrder {

  /** By degree, then the smaller exponent of the last unknown that differs comes later. */
  static final Comparator<Monomial> GRADED = TermOrder::compare;

  private TermOrder() {}

  private static int compare(Monomial one, Monomial other) {
    int byDegree = Integer.compare(one.degree(), other.degree());
    for (int k = Math.max(one.length(), other.length()) - 1; byDegree == 0 && k >= 0; k--) {
      int order = Integer.compare(other.exponent(k), one.exponent(k));
      if (order != 0) {
        return order;
      }
    }
    return byDegree;
  }

  /** The leading monomial of a polynomial that is not zero. */
  static Monomial lead(MultivariatePolynomial polynomial) {
    return polynomial.terms().keySet().stream().max(GRADED).orElseThrow();
  }

  static boolean divides(Monomial divisor, Monomial monomial) {
    for (int k = 0; k < divisor.length(); k++) {
      if (divisor.exponent(k) > monomial.exponent(k)) {
        return false;
      }
    }
    return true;
  }

  /** The quotient of a monomial by a divisor of it. */
  static Monomial quotient(Monomial monomial, Monomial divisor) {
    int[] exponents = new int[monomial.length()];
    for (int k = 0; k < exponents.length; k++) {
      exponents[k] = monomial.exponent(k) - divisor.exponent(k);
    }
    return Monomial.of(exponents);
  }

  static Monomial leastCommonMultiple(Monomial one, Monomial other) {
    int[] exponents = new int[Math.max(one.length(), other.length())];
    for (int k = 0; k < exponents.length; k++) {
      exponents[k] = Math.max(one.exponent(k), other.exponent(k));
    }
    return Monomial.of(exponents);
  }
}
