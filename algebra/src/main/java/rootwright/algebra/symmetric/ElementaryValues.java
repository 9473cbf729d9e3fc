package rootwright.algebra.symmetric;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/** The values of the elementary symmetric polynomials at the roots of a polynomial, by Viète. */
public final class ElementaryValues {

  private ElementaryValues() {}

  /**
   * The list e_0, e_1, …, e_n at the n roots of P, each root taken as often as it occurs: e_k =
   * (−1)^k·a_(n−k)/a_n, so e_0 = 1.
   *
   * @throws IllegalArgumentException if the polynomial is zero
   */
  public static List<Rational> of(Polynomial polynomial) {
    if (polynomial.isZero()) {
      throw new IllegalArgumentException("the zero polynomial has no definite roots");
    }
    int degree = polynomial.degree();
    Rational over = Rational.of(polynomial.numerator(degree));
    List<Rational> values = new ArrayList<>(degree + 1);
    for (int k = 0; k <= degree; k++) {
      Rational quotient = Rational.of(polynomial.numerator(degree - k)).over(over);
      values.add(k % 2 == 0 ? quotient : quotient.negate());
    }
    return List.copyOf(values);
  }
}
