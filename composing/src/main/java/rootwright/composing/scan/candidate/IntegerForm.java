package rootwright.composing.scan.candidate;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/**
 * A polynomial with integer coefficients in the coefficients a₀ … a_n of a candidate: unknown k of
 * {@link #polynomial()} is a_k, the coefficient of x^k.
 */
public final class IntegerForm {

  private static final BigInteger LIMIT = BigInteger.ONE.shiftLeft(62);

  private final MultivariatePolynomial polynomial;
  private final List<Term> terms;

  /** One term; unknown k of the monomial is a_k. */
  record Term(BigInteger coefficient, Monomial monomial) {}

  /**
   * The form.
   *
   * @throws IllegalArgumentException if a coefficient is not a whole number
   */
  public IntegerForm(MultivariatePolynomial polynomial) {
    this.polynomial = polynomial;
    List<Term> collected = new ArrayList<>();
    for (Map.Entry<Monomial, Rational> entry : polynomial.terms().entrySet()) {
      Rational coefficient = entry.getValue();
      if (!coefficient.isInteger()) {
        throw new IllegalArgumentException("not a whole coefficient: " + coefficient);
      }
      collected.add(new Term(coefficient.numerator(), entry.getKey()));
    }
    terms = List.copyOf(collected);
  }

  /** The form as a polynomial in a₀ … a_n. */
  public MultivariatePolynomial polynomial() {
    return polynomial;
  }

  List<Term> terms() {
    return terms;
  }

  /** The greatest power of the constant term a₀. */
  public int degreeInConstant() {
    return polynomial.degreeIn(0);
  }

  /**
   * The exact value at the coefficients of a candidate, constant term first: in 64-bit arithmetic
   * as long as every product and sum fits, otherwise in wide numbers.
   */
  public BigInteger at(long[] ascending) {
    long sum = 0;
    for (Term term : terms) {
      if (term.coefficient.bitLength() > 63) {
        return wideAt(ascending);
      }
      long product = term.coefficient.longValue();
      for (int k = 0; k < term.monomial.length(); k++) {
        for (int times = term.monomial.exponent(k); times > 0; times--) {
          long next = product * ascending[k];
          if (Math.multiplyHigh(product, ascending[k]) != next >> 63) {
            return wideAt(ascending);
          }
          product = next;
        }
      }
      long next = sum + product;
      if (((sum ^ next) & (product ^ next)) < 0) {
        return wideAt(ascending);
      }
      sum = next;
    }
    return BigInteger.valueOf(sum);
  }

  private BigInteger wideAt(long[] ascending) {
    BigInteger sum = BigInteger.ZERO;
    for (Term term : terms) {
      BigInteger product = term.coefficient;
      for (int k = 0; k < term.monomial.length(); k++) {
        if (term.monomial.exponent(k) > 0) {
          product =
              product.multiply(BigInteger.valueOf(ascending[k]).pow(term.monomial.exponent(k)));
        }
      }
      sum = sum.add(product);
    }
    return sum;
  }

  /**
   * Whether the triangle inequality proves |value| ≤ 2⁶² for all candidates with |a_k| ≤ {@code
   * sizes[k]}.
   */
  boolean fits(long[] sizes) {
    BigInteger sum = BigInteger.ZERO;
    for (Term term : terms) {
      BigInteger product = term.coefficient.abs();
      for (int k = 0; k < term.monomial.length(); k++) {
        product = product.multiply(BigInteger.valueOf(sizes[k]).pow(term.monomial.exponent(k)));
      }
      sum = sum.add(product);
    }
    return sum.compareTo(LIMIT) <= 0;
  }
}
