package rootwright.working.review.given;

import java.math.BigInteger;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;

/** Powers of a whole number with an unknown exponent: 4^x is the square of 2^x, an unknown. */
final class Exponential {

  private Exponential() {}

  /** The power as a function of unknowns; empty if it is not of this form. */
  static Optional<RationalFunction> of(
      RationalFunction base, MultivariatePolynomial exponent, Names names) {
    if (!base.isPolynomial() || !base.numerator().isConstant()) {
      return Optional.empty();
    }
    Rational number = base.numerator().coefficient(Monomial.ONE);
    if (!number.isInteger() || number.compareTo(Rational.TWO) < 0) {
      return Optional.empty();
    }
    int k = rootIndex(number.numerator());
    BigInteger least = root(number.numerator(), k);
    RationalFunction product = RationalFunction.ONE;
    for (var term : exponent.terms().entrySet()) {
      Rational factor = term.getValue().times(Rational.of(k));
      if (!factor.isInteger() || factor.absolute().compareTo(Rational.of(20)) > 0) {
        return Optional.empty();
      }
      RationalFunction part =
          term.getKey().degree() == 0
              ? RationalFunction.of(Rational.of(least))
              : RationalFunction.of(
                  MultivariatePolynomial.unknown(
                      names.number(
                          least + " to the " + names.spelling(term.getKey().length() - 1))));
      int power = factor.intValueExact();
      RationalFunction raised = part.power(Math.abs(power));
      product = power < 0 ? product.over(raised) : product.times(raised);
    }
    return Optional.of(product);
  }

  /** The largest k for which the number is a k-th power. */
  private static int rootIndex(BigInteger number) {
    int found = 1;
    for (int k = 2; k <= number.bitLength(); k++) {
      if (root(number, k).pow(k).equals(number)) {
        found = k;
      }
    }
    return found;
  }

  private static BigInteger root(BigInteger number, int k) {
    BigInteger low = BigInteger.ONE;
    BigInteger high = number;
    while (low.compareTo(high) < 0) {
      BigInteger middle = low.add(high).add(BigInteger.ONE).shiftRight(1);
      if (middle.pow(k).compareTo(number) <= 0) {
        low = middle;
      } else {
        high = middle.subtract(BigInteger.ONE);
      }
    }
    return low;
  }
}
