package rootwright.algebra.notation;

import java.util.List;

/**
 * Writes a formula in two dimensions, with built-up fractions and root signs that reach over what
 * stands below them, so that these need no brackets inside.
 */
abstract class BuiltUpWriter extends FormulaWriter {

  /** A fraction stands by itself in a product but not below a power. */
  private static final int FRACTION = 65;

  @Override
  int tightness(Formula formula) {
    boolean fraction =
        formula instanceof Formula.Quotient
            || (formula instanceof Formula.Numeral number
                && number.value().signum() > 0
                && !number.value().isInteger());
    return fraction ? FRACTION : Tightness.of(formula);
  }

  abstract String fraction(String over, String under);

  abstract String raised(String base, String exponent);

  /** The body of a sum or product over the roots with its sign before it. */
  abstract String aggregated(Formula.Aggregate.Operation operation, String body);

  /** Two factors side by side. */
  abstract String besides();

  /** Two factors with a visible sign between them. */
  abstract String dot();

  @Override
  public String quotient(Formula.Quotient quotient) {
    return fraction(quotient.over().choose(this), quotient.under().choose(this));
  }

  @Override
  public String power(Formula.Power power) {
    return raised(at(Tightness.ATOM, power.base()), power.exponent().choose(this));
  }

  @Override
  public String product(Formula.Product product) {
    List<Formula> factors = product.factors();
    List<String> written = factors(product);
    StringBuilder text = new StringBuilder(written.get(0));
    for (int k = 1; k < written.size(); k++) {
      boolean apart = needsDot(factors.get(k - 1), factors.get(k));
      text.append(apart ? dot() : besides()).append(written.get(k));
    }
    return row(text.toString());
  }

  /** A number beside a number, a function's letter before a bracket: they would be misread. */
  private boolean needsDot(Formula before, Formula after) {
    boolean bracket =
        tightness(after) < Tightness.POWER
            || (after instanceof Formula.Power power && tightness(power.base()) < Tightness.ATOM);
    boolean function =
        (before instanceof Formula.Name name
                && FunctionLetters.contains(name.letter().replace("'", "")))
            || (before instanceof Formula.Application word && word.arguments().isEmpty());
    boolean numbers = before instanceof Formula.Numeral && after instanceof Formula.Quotient;
    return beginsWithNumber(after) || numbers || (function && bracket) || isAbsolute(after);
  }

  private static boolean beginsWithNumber(Formula formula) {
    return (formula instanceof Formula.Numeral && !isNegativeNumber(formula))
        || (formula instanceof Formula.Power power && isWhole(power.base()))
        || (formula instanceof Formula.Power absolute && isAbsolute(absolute.base()));
  }

  static boolean isAbsolute(Formula formula) {
    return formula instanceof Formula.Application application
        && application.function().equals("abs")
        && application.arguments().size() == 1;
  }

  /** Whether this is a logarithm whose second argument is its base. */
  static boolean isLogarithmToBase(Formula.Application application) {
    return application.function().equals("log") && application.arguments().size() == 2;
  }

  @Override
  public String aggregate(Formula.Aggregate aggregate) {
    Formula body = aggregate.body();
    return aggregated(
        aggregate.operation(),
        isAggregate(body) ? bracketed(body.choose(this)) : at(Tightness.PRODUCT, body));
  }
}
