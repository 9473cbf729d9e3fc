package rootwright.algebra.symmetric;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/**
 * A polynomial in complete symmetric polynomials h_1, h_2, … of n variables. Where some h_k with k
 * > n occurs the form is one of several with the same value: compare through {@link
 * #toElementary()}.
 *
 * @param variables the number of variables, n
 * @param polynomial unknown k − 1 stands for h_k
 */
public record CompleteForm(int variables, MultivariatePolynomial polynomial) {

  /**
   * Requires a variable.
   *
   * @throws IllegalArgumentException if there is none
   */
  public CompleteForm {
    if (variables < 1) {
      throw new IllegalArgumentException("a form of complete polynomials in no variable");
    }
  }

  /** The only form in h_1, …, h_n with the same value as an elementary form. */
  public static CompleteForm of(ElementaryForm elementary) {
    MultivariatePolynomial polynomial = elementary.polynomial();
    return new CompleteForm(
        elementary.variables(),
        polynomial.substitute(mutual(polynomial.unknowns(), polynomial.unknowns())));
  }

  /** The expression in e_1, …, e_n. */
  public ElementaryForm toElementary() {
    return ElementaryForm.of(
        variables, polynomial.substitute(mutual(polynomial.unknowns(), variables)));
  }

  /** The symmetric polynomial, multiplied out. */
  public SymmetricPolynomial toSymmetric() {
    return toElementary().toSymmetric();
  }

  /**
   * h_1, …, h_last in e_1, …, e_n, and by the same rule e_k in h: h_k = Σ (−1)^(i−1) e_i·h_(k−i)
   * over i = 1 … min(k, n) (Macdonald, Symmetric Functions and Hall Polynomials, I.2.6).
   */
  private static List<MultivariatePolynomial> mutual(int last, int variables) {
    List<MultivariatePolynomial> images = new ArrayList<>();
    images.add(MultivariatePolynomial.ONE);
    for (int k = 1; k <= last; k++) {
      MultivariatePolynomial sum = MultivariatePolynomial.ZERO;
      for (int i = 1; i <= Math.min(k, variables); i++) {
        sum =
            sum.plus(
                MultivariatePolynomial.unknown(i - 1)
                    .times(images.get(k - i))
                    .times(i % 2 == 1 ? Rational.ONE : Rational.MINUS_ONE));
      }
      images.add(sum);
    }
    return images.subList(1, images.size());
  }

  /** For a programmer's eye: {@code 1*h1^2 + -1*h2}. */
  @Override
  public String toString() {
    return Naming.lettered(polynomial, 'h');
  }
}
