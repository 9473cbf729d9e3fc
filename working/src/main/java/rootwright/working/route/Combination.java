package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;

/**
 * A sum of multiples as a person writes it: no factor 1, no multiple of 0, a minus before a
 * negative multiple.
 */
public final class Combination {

  private final List<Formula> terms = new ArrayList<>();

  /** Adds a multiple of a formula; nothing for the factor 0. */
  public Combination plus(Rational factor, Formula formula) {
    if (!factor.isZero()) {
      Formula size = multiple(factor.absolute(), formula);
      terms.add(factor.signum() < 0 ? new Formula.Negative(size) : size);
    }
    return this;
  }

  /** Adds a formula. */
  public Combination plus(Formula formula) {
    return plus(Rational.ONE, formula);
  }

  /** Adds a number; nothing for 0. */
  public Combination plus(Rational number) {
    if (!number.isZero()) {
      terms.add(Formula.number(number));
    }
    return this;
  }

  /** Adds the terms of a sum one by one; nothing for 0. */
  public Combination plusTerms(Formula sum) {
    if (sum instanceof Formula.Sum several) {
      terms.addAll(several.terms());
    } else if (!sum.equals(Formula.number(0))) {
      terms.add(sum);
    }
    return this;
  }

  /** Whether nothing has been added. */
  public boolean isEmpty() {
    return terms.isEmpty();
  }

  /** The sum; 0 if nothing was added. */
  public Formula formula() {
    return Formula.sum(terms);
  }

  /** A product without factors 1; factors that are products are taken apart. */
  public static Formula product(List<Formula> factors) {
    List<Formula> kept = new ArrayList<>();
    for (Formula factor : factors) {
      if (factor instanceof Formula.Product product) {
        kept.addAll(product.factors());
      } else if (!factor.equals(Formula.number(1))) {
        kept.add(factor);
      }
    }
    return Formula.product(kept);
  }

  /** The power, written without exponent 1. */
  public static Formula power(Formula base, int exponent) {
    return exponent == 1 ? base : base.power(exponent);
  }

  private static Formula multiple(Rational factor, Formula formula) {
    return product(List.of(Formula.number(factor), formula));
  }
}
