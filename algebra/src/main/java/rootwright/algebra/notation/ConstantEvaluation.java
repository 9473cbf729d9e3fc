package rootwright.algebra.notation;

import rootwright.algebra.number.Rational;

/** The value of an exponent; the power it belongs to is named in a refusal. */
final class ConstantEvaluation extends FormulaEvaluation<Rational> {

  private final Formula.Power power;

  ConstantEvaluation(Formula.Power power) {
    this.power = power;
  }

  @Override
  Rational number(Formula part, Rational value) {
    return value;
  }

  @Override
  Rational named(Formula part, String spelling) {
    throw new PartRefusedException(
        "exponent",
        "The exponent in %s holds the letter %s; it must be a whole number."
            .formatted(PlainWriter.write(power), spelling),
        part,
        "a whole number");
  }

  @Override
  Rational plus(Formula part, Rational left, Rational right) {
    return left.plus(right);
  }

  @Override
  Rational negate(Rational value) {
    return value.negate();
  }

  @Override
  Rational times(Formula part, Rational left, Rational right) {
    return left.times(right);
  }

  @Override
  Rational over(Formula part, Rational left, Rational right) {
    return left.over(NonZero.divisor(part, right));
  }

  @Override
  Rational power(Formula part, Rational base, int exponent) {
    return NumberPower.of(part, base, exponent);
  }

  @Override
  String called() {
    return "an exponent";
  }
}
