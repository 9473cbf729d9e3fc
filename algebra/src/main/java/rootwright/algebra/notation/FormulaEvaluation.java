package rootwright.algebra.notation;

import java.util.List;
import rootwright.algebra.number.Rational;

/**
 * Evaluates a formula made of numbers, names, the four operations and powers with whole exponents;
 * every other kind is refused. A subclass says in which arithmetic.
 *
 * @param <T> the values
 */
abstract class FormulaEvaluation<T> extends SomeFormulaCases<T> {

  abstract T number(Formula part, Rational value);

  /** The value of a name, or of a member of a family, by its spelling. */
  abstract T named(Formula part, String spelling);

  abstract T plus(Formula part, T left, T right);

  abstract T negate(T value);

  abstract T times(Formula part, T left, T right);

  abstract T over(Formula part, T left, T right);

  /** A power with a positive exponent or a negative one, never zero. */
  abstract T power(Formula part, T base, int exponent);

  /** What formulas of this arithmetic are called in a message: “a polynomial”. */
  abstract String called();

  final T valueOf(Formula formula) {
    return formula.choose(this);
  }

  @Override
  public T numeral(Formula.Numeral numeral) {
    return number(numeral, numeral.value());
  }

  @Override
  public T name(Formula.Name name) {
    return named(name, name.spelling());
  }

  @Override
  public T family(Formula.Family family) {
    return named(family, PlainWriter.write(family));
  }

  @Override
  public T negative(Formula.Negative negative) {
    return negate(valueOf(negative.of()));
  }

  @Override
  public T sum(Formula.Sum sum) {
    T total = valueOf(sum.terms().get(0));
    for (Formula term : rest(sum.terms())) {
      total = plus(sum, total, valueOf(term));
    }
    return total;
  }

  @Override
  public T product(Formula.Product product) {
    T total = valueOf(product.factors().get(0));
    for (Formula factor : rest(product.factors())) {
      total = times(product, total, valueOf(factor));
    }
    return total;
  }

  @Override
  public T quotient(Formula.Quotient quotient) {
    return over(quotient, valueOf(quotient.over()), valueOf(quotient.under()));
  }

  @Override
  public T power(Formula.Power power) {
    int exponent = Exponent.of(power);
    T base = valueOf(power.base());
    return exponent == 0 ? number(power, Rational.ONE) : power(power, base, exponent);
  }

  @Override
  protected T otherwise(Formula formula) {
    throw new PartRefusedException(
        "not-a-polynomial",
        "%s cannot stand in %s.".formatted(formula.choose(KindNames.TABLE), called()),
        formula,
        "numbers, letters, + − · / and powers");
  }

  private static List<Formula> rest(List<Formula> parts) {
    return parts.subList(1, parts.size());
  }
}
