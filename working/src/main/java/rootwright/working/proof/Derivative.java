package rootwright.working.proof;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.SomeFormulaCases;
import rootwright.algebra.number.Rational;

/** The derivative of a formula by the rules for sums, products and powers; nothing is expanded. */
final class Derivative extends SomeFormulaCases<Formula> {

  private final String unknown;

  private Derivative(String unknown) {
    this.unknown = unknown;
  }

  static Formula of(Formula formula, String unknown) {
    return formula.choose(new Derivative(unknown));
  }

  @Override
  public Formula numeral(Formula.Numeral numeral) {
    return Formula.number(0);
  }

  @Override
  public Formula name(Formula.Name name) {
    return Formula.number(name.spelling().equals(unknown) ? 1 : 0);
  }

  @Override
  public Formula family(Formula.Family family) {
    return Formula.number(0);
  }

  @Override
  public Formula negative(Formula.Negative negative) {
    return new Formula.Negative(negative.of().choose(this));
  }

  @Override
  public Formula sum(Formula.Sum sum) {
    return new Formula.Sum(sum.terms().stream().map(term -> term.choose(this)).toList());
  }

  @Override
  public Formula product(Formula.Product product) {
    List<Formula> terms = new ArrayList<>();
    for (int k = 0; k < product.factors().size(); k++) {
      List<Formula> factors = new ArrayList<>(product.factors());
      factors.set(k, factors.get(k).choose(this));
      terms.add(new Formula.Product(factors));
    }
    return new Formula.Sum(terms);
  }

  @Override
  public Formula power(Formula.Power power) {
    if (power.exponent() instanceof Formula.Numeral exponent && exponent.value().signum() > 0) {
      Rational one = exponent.value();
      return new Formula.Product(
          List.of(
              exponent,
              new Formula.Power(power.base(), Formula.number(one.minus(Rational.ONE))),
              power.base().choose(this)));
    }
    return otherwise(power);
  }

  @Override
  protected Formula otherwise(Formula formula) {
    throw new UnsayableException("a function that is not a polynomial is differentiated");
  }
}
