package rootwright.composing.scan.filter;

import rootwright.algebra.number.Rational;

/**
 * The value is one wanted number, such as the year.
 *
 * @param number the number
 */
public record WantedNumber(Rational number) implements AnswerShape {

  @Override
  public String name() {
    return "answer-equal-to-" + number;
  }

  @Override
  public String explanation() {
    return "The answer is " + number + ".";
  }

  @Override
  public boolean holds(Rational value, long[] ascending) {
    return value.equals(number);
  }

  @Override
  public boolean holds(long numerator, long denominator, long[] ascending) {
    if (number.numerator().bitLength() > 63 || number.denominator().bitLength() > 63) {
      return AnswerShape.super.holds(numerator, denominator, ascending);
    }
    long over = number.numerator().longValue();
    long under = number.denominator().longValue();
    // Both 128-bit products are compared, so that nothing can overflow.
    return numerator * under == denominator * over
        && Math.multiplyHigh(numerator, under) == Math.multiplyHigh(denominator, over);
  }
}
