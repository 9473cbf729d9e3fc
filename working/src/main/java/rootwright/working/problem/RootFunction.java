package rootwright.working.problem;

import rootwright.algebra.polynomial.Polynomial;

/**
 * A rational function of one root, f(r) = numerator(r)/denominator(r), in lowest terms with a
 * primitive denominator of positive lead, so that equal functions are equal records.
 *
 * @param numerator any polynomial
 * @param denominator not zero; 1 for a polynomial function
 */
public record RootFunction(Polynomial numerator, Polynomial denominator) {

  /**
   * Cancels common factors.
   *
   * @throws ArithmeticException if the denominator is zero
   */
  public RootFunction {
    if (denominator.isZero()) {
      throw new ArithmeticException("the denominator of a function of a root is zero");
    }
    Polynomial common =
        numerator.isZero()
            ? denominator
            : denominator.degree() == 0 ? Polynomial.ONE : numerator.gcd(denominator);
    Polynomial under = denominator.divide(common).quotient();
    Polynomial primitive = under.primitive();
    numerator = numerator.divide(common).quotient().times(primitive.lead().over(under.lead()));
    denominator = primitive;
  }

  /** A polynomial function. */
  public static RootFunction of(Polynomial polynomial) {
    return new RootFunction(polynomial, Polynomial.ONE);
  }

  /** Whether no root stands in a denominator. */
  public boolean isPolynomial() {
    return denominator.degree() == 0;
  }
}
