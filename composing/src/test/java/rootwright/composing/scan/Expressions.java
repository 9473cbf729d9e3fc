package rootwright.composing.scan;

import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.composing.scan.candidate.CompiledExpression;

/** Symmetric expressions for the tests, written in the elementary symmetric polynomials by hand. */
public final class Expressions {

  private Expressions() {}

  /** e_k. */
  public static MultivariatePolynomial elementary(int k) {
    return MultivariatePolynomial.unknown(k - 1);
  }

  /** Σ r. */
  public static CompiledExpression sum(int degree) {
    return CompiledExpression.of(degree, elementary(1));
  }

  /** Σ r² = e1² − 2e2. */
  public static CompiledExpression sumOfSquares(int degree) {
    return CompiledExpression.of(
        degree, elementary(1).power(2).minus(elementary(2).times(Rational.TWO)));
  }

  /** Σ r³ = e1³ − 3e1e2 + 3e3, for degree 3 at least. */
  public static CompiledExpression sumOfCubes(int degree) {
    MultivariatePolynomial mixed =
        elementary(1).times(elementary(2)).minus(elementary(3)).times(Rational.of(3));
    return CompiledExpression.of(degree, elementary(1).power(3).minus(mixed));
  }

  /** Σ r²s = e1e2 − 3e3, for degree 3 at least. */
  public static CompiledExpression sumOfSquareTimesOther(int degree) {
    return CompiledExpression.of(
        degree, elementary(1).times(elementary(2)).minus(elementary(3).times(Rational.of(3))));
  }

  /** Σ 1/r² = (e2² − 2e1e3)/e3² for cubics. */
  public static CompiledExpression sumOfReciprocalSquares() {
    return CompiledExpression.of(
        3,
        elementary(2).power(2).minus(elementary(1).times(elementary(3)).times(Rational.TWO)),
        elementary(3).power(2));
  }
}
