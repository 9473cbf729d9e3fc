package rootwright.algebra.polynomial;

import rootwright.algebra.number.Rational;

/**
 * A quotient of two polynomials in several unknowns, not reduced: equality of functions is {@link
 * #isSameFunction}, not {@code equals}.
 *
 * @param numerator any polynomial
 * @param denominator not the zero polynomial
 */
public record RationalFunction(
    MultivariatePolynomial numerator, MultivariatePolynomial denominator) {

  public static final RationalFunction ZERO = of(MultivariatePolynomial.ZERO);
  public static final RationalFunction ONE = of(MultivariatePolynomial.ONE);

  /**
   * Takes the constant factor of a constant denominator into the numerator.
   *
   * @throws ArithmeticException if the denominator is the zero polynomial
   */
  public RationalFunction {
    if (denominator.isZero()) {
      throw new ArithmeticException("the denominator is identically zero");
    }
    if (denominator.isConstant() && !denominator.equals(MultivariatePolynomial.ONE)) {
      numerator = numerator.times(denominator.coefficient(Monomial.ONE).reciprocal());
      denominator = MultivariatePolynomial.ONE;
    }
  }

  /** A polynomial as a function. */
  public static RationalFunction of(MultivariatePolynomial polynomial) {
    return new RationalFunction(polynomial, MultivariatePolynomial.ONE);
  }

  /** A number as a function. */
  public static RationalFunction of(Rational value) {
    return of(MultivariatePolynomial.constant(value));
  }

  /** Whether the denominator is constant. */
  public boolean isPolynomial() {
    return denominator.isConstant();
  }

  /** The sum. */
  public RationalFunction plus(RationalFunction other) {
    if (denominator.equals(other.denominator)) {
      return new RationalFunction(numerator.plus(other.numerator), denominator);
    }
    return new RationalFunction(
        numerator.times(other.denominator).plus(other.numerator.times(denominator)),
        denominator.times(other.denominator));
  }

  /** The difference. */
  public RationalFunction minus(RationalFunction other) {
    return plus(other.negate());
  }

  /** The function with the other sign. */
  public RationalFunction negate() {
    return new RationalFunction(numerator.negate(), denominator);
  }

  /** The product. */
  public RationalFunction times(RationalFunction other) {
    return new RationalFunction(
        numerator.times(other.numerator), denominator.times(other.denominator));
  }

  /**
   * The quotient.
   *
   * @throws ArithmeticException if the divisor is identically zero
   */
  public RationalFunction over(RationalFunction divisor) {
    return new RationalFunction(
        numerator.times(divisor.denominator), denominator.times(divisor.numerator));
  }

  /**
   * The power with a whole-number exponent.
   *
   * @throws ArithmeticException if the function is zero and the exponent negative
   */
  public RationalFunction power(int exponent) {
    return exponent >= 0
        ? new RationalFunction(numerator.power(exponent), denominator.power(exponent))
        : ONE.over(this).power(Math.negateExact(exponent));
  }

  /** Whether both are the same function: the cross products agree. */
  public boolean isSameFunction(RationalFunction other) {
    return numerator.times(other.denominator).equals(other.numerator.times(denominator));
  }

  /**
   * The same function without a common factor, the lexicographically highest term of the
   * denominator having coefficient 1: two functions are the same exactly when these are equal.
   */
  public RationalFunction lowestTerms() {
    if (isPolynomial()) {
      return this;
    }
    if (numerator.isZero()) {
      return ZERO;
    }
    CommonDivisor.Cofactors cofactors = CommonDivisor.takenOut(numerator, denominator);
    Rational lead = cofactors.second().terms().lastEntry().getValue().reciprocal();
    return new RationalFunction(cofactors.first().times(lead), cofactors.second().times(lead));
  }

  /** The function with unknown k renamed to {@code images[k]}. */
  public RationalFunction rename(int... images) {
    return new RationalFunction(numerator.rename(images), denominator.rename(images));
  }

  /** One more than the number of the last unknown that occurs. */
  public int unknowns() {
    return Math.max(numerator.unknowns(), denominator.unknowns());
  }
}
