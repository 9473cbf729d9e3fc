package rootwright.working.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/**
 * A polynomial in named quantities, such as e_1² − 2·e_2, with their names or with their values.
 *
 * @param form unknown k − 1 stands for the quantity with index k
 * @param name the name of the quantity with an index, from 1
 */
public record NamedForm(MultivariatePolynomial form, IntFunction<Formula> name) {

  /** The form in e_1, e_2, …. */
  public static NamedForm inElementary(MultivariatePolynomial form) {
    return new NamedForm(form, NamedForm::elementary);
  }

  /** The name e_k. */
  public static Formula elementary(int k) {
    return new Formula.Family("e", Formula.number(k));
  }

  /** The indices of the quantities that occur. */
  public SortedSet<Integer> indices() {
    SortedSet<Integer> indices = new TreeSet<>();
    for (int k = 0; k < form.unknowns(); k++) {
      if (form.degreeIn(k) > 0) {
        indices.add(k + 1);
      }
    }
    return indices;
  }

  /** With the names. */
  public Formula written() {
    Combination sum = new Combination();
    for (Map.Entry<Monomial, Rational> term : ordered()) {
      sum.plus(term.getValue(), product(term.getKey(), name));
    }
    return sum.formula();
  }

  /**
   * With the values; products that are zero are left out.
   *
   * @param values the value of the quantity with index k, from 0, at place k
   */
  public Formula worked(List<Rational> values) {
    Combination sum = new Combination();
    for (Map.Entry<Monomial, Rational> term : without(values).ordered()) {
      sum.plus(term.getValue(), product(term.getKey(), k -> Formula.number(values.get(k))));
    }
    return sum.formula();
  }

  /** Lexicographically descending, but a term with a plus first if there is one. */
  private List<Map.Entry<Monomial, Rational>> ordered() {
    List<Map.Entry<Monomial, Rational>> ordered =
        new ArrayList<>(form.terms().descendingMap().entrySet());
    for (int k = 0; k < ordered.size(); k++) {
      if (ordered.get(k).getValue().signum() > 0) {
        ordered.add(0, ordered.remove(k));
        break;
      }
    }
    return ordered;
  }

  /** The form without the products that are zero because a quantity is. */
  public NamedForm without(List<Rational> values) {
    Map<Monomial, Rational> kept = new HashMap<>(form.terms());
    kept.keySet()
        .removeIf(
            monomial ->
                IntStream.range(0, monomial.length())
                    .anyMatch(k -> monomial.exponent(k) > 0 && values.get(k + 1).isZero()));
    return new NamedForm(MultivariatePolynomial.of(kept), name);
  }

  /** The value at the values, indexed as in {@link #worked}. */
  public Rational value(List<Rational> values) {
    return form.at(values.subList(1, values.size()));
  }

  private static Formula product(Monomial monomial, IntFunction<Formula> name) {
    List<Formula> factors = new ArrayList<>();
    for (int k = 0; k < monomial.length(); k++) {
      if (monomial.exponent(k) > 0) {
        Formula base = name.apply(k + 1);
        factors.add(
            base.equals(Formula.number(1)) ? base : Combination.power(base, monomial.exponent(k)));
      }
    }
    return Combination.product(factors);
  }
}
