package rootwright.composing.scan.candidate;

import java.math.BigInteger;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/**
 * A symmetric expression in the roots, turned into a quotient of two integer forms in the
 * coefficients of the polynomial.
 *
 * <p>By Vieta e_k = (−1)^k a_{n−k} / a_n. A polynomial A in the e_k of degree p, multiplied by
 * a_n^p and by the common denominator of its coefficients, is an integer form of degree p; so A/B
 * of degrees p and q is a quotient of integer forms with a power of a_n, which is never zero, in
 * front of one of them. Common powers of a_n and common whole factors are taken out.
 */
public final class CompiledExpression {

  private final int degree;
  private final IntegerForm numerator;
  private final IntegerForm denominator;
  private final Parity parity;

  private CompiledExpression(
      int degree, IntegerForm numerator, IntegerForm denominator, Parity parity) {
    this.degree = degree;
    this.numerator = numerator;
    this.denominator = denominator;
    this.parity = parity;
  }

  /** The expression given by a polynomial in e₁ … e_n, unknown k − 1 being e_k. */
  public static CompiledExpression of(int degree, MultivariatePolynomial elementary) {
    return of(degree, elementary, MultivariatePolynomial.ONE);
  }

  /**
   * The expression given by a quotient of polynomials in e₁ … e_n, unknown k − 1 being e_k.
   *
   * @param degree the degree n of the polynomials whose roots are meant
   * @throws ArithmeticException if the denominator is identically zero
   * @throws IllegalArgumentException if some e_k with k above the degree occurs
   */
  public static CompiledExpression of(
      int degree, MultivariatePolynomial numerator, MultivariatePolynomial denominator) {
    if (denominator.isZero()) {
      throw new ArithmeticException("the denominator is identically zero");
    }
    int unknowns = Math.max(numerator.unknowns(), denominator.unknowns());
    if (unknowns > degree) {
      throw new IllegalArgumentException("e" + unknowns + " does not exist in degree " + degree);
    }
    // Both are multiplied by the same power of a_n, so the quotient stays.
    int total = Math.max(numerator.degree(), denominator.degree());
    MultivariatePolynomial above = homogeneous(degree, numerator, total);
    MultivariatePolynomial below = homogeneous(degree, denominator, total);
    int common = Math.min(leastPower(above, degree), leastPower(below, degree));
    Rational factor = wholeFactor(above, below);
    Parity parity = Parity.of(numerator).over(Parity.of(denominator));
    return new CompiledExpression(
        degree,
        new IntegerForm(lower(above, degree, common).times(factor)),
        new IntegerForm(lower(below, degree, common).times(factor)),
        parity);
  }

  /** a_n^total · A(e), with e_k = (−1)^k a_{n−k} / a_n. */
  private static MultivariatePolynomial homogeneous(
      int degree, MultivariatePolynomial elementary, int total) {
    Map<Monomial, Rational> terms = new TreeMap<>();
    elementary
        .terms()
        .forEach(
            (monomial, coefficient) -> {
              int[] exponents = new int[degree + 1];
              int odd = 0;
              for (int k = 1; k <= monomial.length(); k++) {
                int exponent = monomial.exponent(k - 1);
                exponents[degree - k] = exponent;
                odd += k % 2 * exponent;
              }
              exponents[degree] = total - monomial.degree();
              terms.put(Monomial.of(exponents), odd % 2 == 0 ? coefficient : coefficient.negate());
            });
    return MultivariatePolynomial.of(terms);
  }

  private static int leastPower(MultivariatePolynomial form, int unknown) {
    return form.terms().keySet().stream()
        .mapToInt(monomial -> monomial.exponent(unknown))
        .min()
        .orElse(Integer.MAX_VALUE);
  }

  private static MultivariatePolynomial lower(
      MultivariatePolynomial form, int unknown, int exponent) {
    Map<Monomial, Rational> terms = new TreeMap<>();
    form.terms()
        .forEach(
            (monomial, coefficient) -> {
              int[] exponents = new int[unknown + 1];
              for (int k = 0; k <= unknown; k++) {
                exponents[k] = monomial.exponent(k);
              }
              exponents[unknown] -= exponent;
              terms.put(Monomial.of(exponents), coefficient);
            });
    return MultivariatePolynomial.of(terms);
  }

  /** The positive number that makes all coefficients of both forms whole and without a divisor. */
  private static Rational wholeFactor(MultivariatePolynomial above, MultivariatePolynomial below) {
    BigInteger multiple = BigInteger.ONE;
    BigInteger divisor = BigInteger.ZERO;
    for (MultivariatePolynomial form : new MultivariatePolynomial[] {above, below}) {
      for (Rational coefficient : form.terms().values()) {
        BigInteger under = coefficient.denominator();
        multiple = multiple.divide(multiple.gcd(under)).multiply(under);
        divisor = divisor.gcd(coefficient.numerator());
      }
    }
    return new Rational(multiple, divisor);
  }

  /** The degree n of the polynomials whose roots are meant. */
  public int degree() {
    return degree;
  }

  /** The form above the line. */
  public IntegerForm numerator() {
    return numerator;
  }

  /** The form below the line; where it is zero the expression has no value. */
  public IntegerForm denominator() {
    return denominator;
  }

  /** Whether the denominator is a number times a power of a_n, so that there is always a value. */
  public boolean isAlwaysDefined() {
    return denominator.terms().size() == 1
        && denominator.polynomial().degree() == denominator.polynomial().degreeIn(degree);
  }

  /** What happens to the value when every root changes its sign. */
  public Parity parity() {
    return parity;
  }

  /**
   * The value for the polynomial with these coefficients, constant term first; empty if the
   * denominator is zero.
   */
  public Optional<Rational> valueAt(long[] ascending) {
    BigInteger below = denominator.at(ascending);
    return below.signum() == 0
        ? Optional.empty()
        : Optional.of(new Rational(numerator.at(ascending), below));
  }

  /** The two forms, for a programmer's eye and for telling expressions apart. */
  @Override
  public String toString() {
    return "(" + numerator.polynomial() + ") / (" + denominator.polynomial() + ")";
  }
}
