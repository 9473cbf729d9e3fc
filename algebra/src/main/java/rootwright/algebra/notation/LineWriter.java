package rootwright.algebra.notation;

import rootwright.algebra.number.Rational;

/** Writes a formula on one line, with the brackets that the reader needs to give it back. */
abstract class LineWriter extends FormulaWriter {

  abstract String minus();

  abstract String plusMinusSign();

  abstract String comparison(Formula.Comparison comparison);

  @Override
  String bracketed(String text) {
    return "(" + text + ")";
  }

  @Override
  String number(Rational value) {
    return value.toString();
  }

  @Override
  String prefixMinus() {
    return minus();
  }

  @Override
  String infixMinus() {
    return " " + minus() + " ";
  }

  @Override
  String infixPlus() {
    return " + ";
  }

  @Override
  String prefixPlusMinus() {
    return plusMinusSign();
  }

  @Override
  String infixPlusMinus() {
    return " " + plusMinusSign() + " ";
  }

  @Override
  String infixComparison(Formula.Comparison comparison) {
    return " " + comparison(comparison) + " ";
  }

  @Override
  String infixModulo() {
    return " mod ";
  }

  @Override
  String comma() {
    return ", ";
  }

  @Override
  public String imaginaryUnit(Formula.ImaginaryUnit imaginaryUnit) {
    return "i";
  }

  @Override
  public String quotient(Formula.Quotient quotient) {
    boolean sums = isAggregate(quotient.over()) && isAggregate(quotient.under());
    String over =
        sums || holdsTogetherAbove(quotient.over(), quotient.under())
            ? quotient.over().choose(this)
            : at(Tightness.POWER, quotient.over());
    String under =
        isAggregate(quotient.under())
            ? quotient.under().choose(this)
            : at(Tightness.POWER, quotient.under());
    return over + "/" + under;
  }

  /** Whether a product can stand above a stroke without a bracket. */
  private static boolean holdsTogetherAbove(Formula over, Formula under) {
    if (!(over instanceof Formula.Product product)) {
      return false;
    }
    Formula last = product.factors().get(product.factors().size() - 1);
    boolean numbers = last instanceof Formula.Numeral && under instanceof Formula.Numeral;
    return !isAggregate(last) && !numbers;
  }

  @Override
  public String application(Formula.Application application) {
    return application.arguments().isEmpty()
        ? application.function()
        : application.function() + "(" + separated(application.arguments()) + ")";
  }

  @Override
  public String words(Formula.Words words) {
    return words.text();
  }
}
