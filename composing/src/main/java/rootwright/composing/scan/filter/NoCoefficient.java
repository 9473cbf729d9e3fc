package rootwright.composing.scan.filter;

import rootwright.algebra.number.Rational;

/** The value is none of the printed coefficients, nor one with the sign changed. */
public record NoCoefficient() implements AnswerShape {

  @Override
  public String name() {
    return "answer-no-coefficient";
  }

  @Override
  public String explanation() {
    return "The answer is not one of the coefficients, whatever its sign.";
  }

  @Override
  public boolean holds(Rational value, long[] ascending) {
    Rational size = value.absolute();
    for (long coefficient : ascending) {
      if (size.equals(Rational.of(Math.abs(coefficient)))) {
        return false;
      }
    }
    return true;
  }

  @Override
  public boolean holds(long numerator, long denominator, long[] ascending) {
    long quotient = numerator / denominator;
    if (quotient * denominator != numerator) {
      return true;
    }
    for (long coefficient : ascending) {
      if (coefficient == quotient || coefficient == -quotient) {
        return false;
      }
    }
    return true;
  }
}
