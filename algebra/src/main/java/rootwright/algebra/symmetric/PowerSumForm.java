package rootwright.algebra.symmetric;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/**
 * A polynomial in power sums p_1, p_2, … of n variables. Where some p_k with k > n occurs the form
 * is one of several with the same value: compare through {@link #toElementary()}.
 *
 * @param variables the number of variables, n
 * @param polynomial unknown k − 1 stands for p_k; p_0 = n does not occur
 */
public record PowerSumForm(int variables, MultivariatePolynomial polynomial) {

  /**
   * Requires a variable.
   *
   * @throws IllegalArgumentException if there is none
   */
  public PowerSumForm {
    if (variables < 1) {
      throw new IllegalArgumentException("a form of power sums in " + variables + " variables");
    }
  }

  /**
   * The form that removes one part after the other: p_a·m_μ makes m_λ and partitions with fewer
   * parts.
   */
  static PowerSumForm of(SymmetricPolynomial symmetric) {
    Map<Partition, MultivariatePolynomial> known = new HashMap<>();
    MultivariatePolynomial sum = MultivariatePolynomial.ZERO;
    for (Map.Entry<Partition, Rational> term : symmetric.terms().entrySet()) {
      sum = sum.plus(monomial(term.getKey(), symmetric.variables(), known).times(term.getValue()));
    }
    return new PowerSumForm(symmetric.variables(), sum);
  }

  static PowerSumForm of(ElementaryForm elementary) {
    List<MultivariatePolynomial> images = new ArrayList<>();
    MultivariatePolynomial polynomial = elementary.polynomial();
    for (int k = 1; k <= polynomial.unknowns(); k++) {
      images.add(GirardWaring.elementary(k));
    }
    return new PowerSumForm(elementary.variables(), polynomial.substitute(images));
  }

  private static MultivariatePolynomial monomial(
      Partition partition, int variables, Map<Partition, MultivariatePolynomial> known) {
    if (partition.length() == 0) {
      return MultivariatePolynomial.ONE;
    }
    int largest = partition.part(0);
    if (partition.length() == 1) {
      return MultivariatePolynomial.unknown(largest - 1);
    }
    MultivariatePolynomial remembered = known.get(partition);
    if (remembered != null) {
      return remembered;
    }
    int[] rest = partition.padded(partition.length());
    rest[0] = 0;
    Partition smaller = Partition.of(rest);
    SymmetricPolynomial product =
        SymmetricPolynomial.powerSum(variables, largest)
            .times(SymmetricPolynomial.monomial(variables, smaller));
    MultivariatePolynomial sum =
        MultivariatePolynomial.unknown(largest - 1).times(monomial(smaller, variables, known));
    for (Map.Entry<Partition, Rational> term : product.terms().entrySet()) {
      if (!term.getKey().equals(partition)) {
        sum = sum.minus(monomial(term.getKey(), variables, known).times(term.getValue()));
      }
    }
    MultivariatePolynomial form = sum.times(product.coefficient(partition).reciprocal());
    known.put(partition, form);
    return form;
  }

  /** The expression in e_1, …, e_n, by Girard–Waring for each power sum. */
  public ElementaryForm toElementary() {
    List<MultivariatePolynomial> images = new ArrayList<>();
    for (int k = 1; k <= polynomial.unknowns(); k++) {
      images.add(
          polynomial.degreeIn(k - 1) == 0
              ? MultivariatePolynomial.ZERO
              : GirardWaring.powerSum(k, variables).polynomial());
    }
    return ElementaryForm.of(variables, polynomial.substitute(images));
  }

  /** The symmetric polynomial, multiplied out. */
  public SymmetricPolynomial toSymmetric() {
    SymmetricPolynomial sum = SymmetricPolynomial.constant(variables, Rational.ZERO);
    for (Map.Entry<Monomial, Rational> term : polynomial.terms().entrySet()) {
      SymmetricPolynomial product = SymmetricPolynomial.constant(variables, term.getValue());
      for (int k = 1; k <= term.getKey().length(); k++) {
        for (int factor = 0; factor < term.getKey().exponent(k - 1); factor++) {
          product = product.times(SymmetricPolynomial.powerSum(variables, k));
        }
      }
      sum = sum.plus(product);
    }
    return sum;
  }

  /**
   * The value where p_1, p_2, … have these values.
   *
   * @throws IllegalArgumentException if a power sum that occurs has no value
   */
  public Rational at(List<Rational> values) {
    if (values.size() < polynomial.unknowns()) {
      throw new IllegalArgumentException(
          "%d values, but p_%d occurs".formatted(values.size(), polynomial.unknowns()));
    }
    return polynomial.at(values);
  }

  /** For a programmer's eye: {@code 1/2*p1^2 + -1/2*p2}. */
  @Override
  public String toString() {
    return Naming.lettered(polynomial, 'p');
  }
}
