package rootwright.algebra.symmetric;

import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;

/**
 * A symmetric rational function of n variables, as a quotient of symmetric polynomials; not
 * reduced.
 *
 * @param numerator any symmetric polynomial
 * @param denominator not zero, in the same variables
 */
public record SymmetricQuotient(SymmetricPolynomial numerator, SymmetricPolynomial denominator) {

  /**
   * Requires a denominator in the same variables.
   *
   * @throws ArithmeticException if the denominator is the zero polynomial
   * @throws IllegalArgumentException if the variables differ in number
   */
  public SymmetricQuotient {
    if (denominator.isZero()) {
      throw new ArithmeticException("the denominator is identically zero");
    }
    if (numerator.variables() != denominator.variables()) {
      throw new IllegalArgumentException(
          "%d variables over %d".formatted(numerator.variables(), denominator.variables()));
    }
  }

  /**
   * Reads a rational function of n variables as a symmetric one. Where its numerator and
   * denominator are not symmetric by themselves, the quotient is expanded by the other images of
   * the denominator.
   *
   * @throws IllegalArgumentException if an unknown with number n or above occurs
   */
  public static QuotientRecognition recognise(RationalFunction function, int variables) {
    return new QuotientReader(variables).read(function);
  }

  /**
   * The value at the roots of a polynomial of degree n; empty where the denominator of this
   * quotient is zero there.
   *
   * @throws IllegalArgumentException if the degree is not n
   */
  public Optional<Rational> at(Polynomial polynomial) {
    Rational under = denominator.toElementary().at(polynomial);
    return under.isZero()
        ? Optional.empty()
        : Optional.of(numerator.toElementary().at(polynomial).over(under));
  }
}
