package rootwright.algebra.symmetric;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.internal.PackedPolynomial;

/**
 * A polynomial in the elementary symmetric polynomials e_1, …, e_n of n variables. Each symmetric
 * polynomial has exactly one such form, so {@code equals} is equality of symmetric polynomials.
 */
public final class ElementaryForm {

  private final int variables;
  private final Body body;

  private ElementaryForm(int variables, Body body) {
    this.variables = variables;
    this.body = body;
  }

  /** How the terms are kept. Packed terms are spread out only when somebody asks for them. */
  private sealed interface Body {
    MultivariatePolynomial polynomial();

    Rational at(List<Rational> values);

    int size();
  }

  private record Spread(MultivariatePolynomial polynomial) implements Body {
    @Override
    public Rational at(List<Rational> values) {
      return polynomial.at(values);
    }

    @Override
    public int size() {
      return polynomial.terms().size();
    }
  }

  private record Packed(PackedPolynomial terms, Rational factor) implements Body {
    @Override
    public Rational at(List<Rational> values) {
      List<List<Rational>> powers = new ArrayList<>();
      for (int slot = 0; slot < terms.packing().slots(); slot++) {
        powers.add(new ArrayList<>(List.of(Rational.ONE)));
      }
      Rational sum = Rational.ZERO;
      for (int index = 0; index < terms.size(); index++) {
        Rational product = Rational.of(terms.coefficient(index));
        for (int slot = 0; slot < powers.size(); slot++) {
          int exponent = terms.packing().at(terms.key(index), slot);
          List<Rational> known = powers.get(slot);
          while (known.size() <= exponent) {
            known.add(known.get(known.size() - 1).times(values.get(slot)));
          }
          if (exponent > 0) {
            product = product.times(known.get(exponent));
          }
        }
        sum = sum.plus(product);
      }
      return sum.times(factor);
    }

    @Override
    public int size() {
      return terms.size();
    }

    @Override
    public MultivariatePolynomial polynomial() {
      NavigableMap<Monomial, Rational> spread = new TreeMap<>();
      for (int index = 0; index < terms.size(); index++) {
        spread.put(
            Monomial.of(terms.packing().unpack(terms.key(index))),
            Rational.of(terms.coefficient(index)).times(factor));
      }
      return MultivariatePolynomial.of(spread);
    }
  }

  /**
   * The form whose unknown k − 1 stands for e_k.
   *
   * @throws IllegalArgumentException if there is no variable or an e_k with k > n occurs
   */
  public static ElementaryForm of(int variables, MultivariatePolynomial polynomial) {
    if (variables < 1) {
      throw new IllegalArgumentException("an elementary form in " + variables + " variables");
    }
    if (polynomial.unknowns() > variables) {
      throw new IllegalArgumentException(
          "e_%d in a form of %d variables".formatted(polynomial.unknowns(), variables));
    }
    return new ElementaryForm(variables, new Spread(polynomial));
  }

  /** A factor times packed terms; the factor is not zero. */
  static ElementaryForm packed(int variables, PackedPolynomial terms, Rational factor) {
    return new ElementaryForm(variables, new Packed(terms, factor));
  }

  /** The number of variables, n. */
  public int variables() {
    return variables;
  }

  /** The number of terms. */
  public int size() {
    return body.size();
  }

  /** The polynomial; unknown k − 1 stands for e_k. One step for each term. */
  public MultivariatePolynomial polynomial() {
    return body.polynomial();
  }

  /**
   * The value where e_1, …, e_n have these values.
   *
   * @throws IllegalArgumentException if there are not n values
   */
  public Rational at(List<Rational> values) {
    if (values.size() != variables) {
      throw new IllegalArgumentException(
          "%d values for e_1, …, e_%d".formatted(values.size(), variables));
    }
    return body.at(values);
  }

  /**
   * The value at the roots of a polynomial of degree n, each taken as often as it occurs.
   *
   * @throws IllegalArgumentException if the degree is not n
   */
  public Rational at(Polynomial polynomial) {
    if (polynomial.degree() != variables) {
      throw new IllegalArgumentException(
          "a form of %d variables at the %d roots of %s"
              .formatted(variables, polynomial.degree(), polynomial));
    }
    return at(ElementaryValues.of(polynomial).subList(1, variables + 1));
  }

  /** The symmetric polynomial, multiplied out. */
  public SymmetricPolynomial toSymmetric() {
    ElementaryExpansions expansions = new ElementaryExpansions(variables);
    SymmetricPolynomial sum = SymmetricPolynomial.constant(variables, Rational.ZERO);
    for (Map.Entry<Monomial, Rational> term : polynomial().terms().entrySet()) {
      sum = sum.plus(expansions.of(leading(term.getKey())).times(term.getValue()));
    }
    return sum;
  }

  /** An expression in power sums p_1, …, p_n with the same value; there is exactly one. */
  public PowerSumForm toPowerSums() {
    return PowerSumForm.of(this);
  }

  /**
   * The leading partition of a product of elementary polynomials: its columns are the indices of
   * the factors.
   */
  static Partition leading(Monomial product) {
    int[] parts = new int[product.length()];
    int sum = 0;
    for (int k = product.length() - 1; k >= 0; k--) {
      sum += product.exponent(k);
      parts[k] = sum;
    }
    return Partition.of(parts);
  }

  /** The product of elementary polynomials that leads with this partition: λ_k − λ_(k+1) each. */
  static Monomial product(Partition leading) {
    int[] exponents = new int[leading.length()];
    for (int k = 0; k < exponents.length; k++) {
      exponents[k] = leading.part(k) - leading.part(k + 1);
    }
    return Monomial.of(exponents);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ElementaryForm that
        && variables == that.variables
        && size() == that.size()
        && polynomial().equals(that.polynomial());
  }

  @Override
  public int hashCode() {
    return 31 * polynomial().hashCode() + variables;
  }

  /** For a programmer's eye: {@code 1*e1^2 + -2*e2}. */
  @Override
  public String toString() {
    return Naming.lettered(polynomial(), 'e');
  }
}
