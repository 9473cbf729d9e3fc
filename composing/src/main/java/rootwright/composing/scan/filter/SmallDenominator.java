package rootwright.composing.scan.filter;

import rootwright.algebra.number.Rational;

/**
 * In lowest terms the value has a denominator up to a bound.
 *
 * @param largest the greatest denominator allowed, at least 1
 */
public record SmallDenominator(long largest) implements AnswerShape {

  /**
   * Checks the bound.
   *
   * @throws IllegalArgumentException if it is less than 1
   */
  public SmallDenominator {
    if (largest < 1) {
      throw new IllegalArgumentException("a denominator is at least 1, not at most " + largest);
    }
  }

  @Override
  public String name() {
    return "answer-denominator-up-to-" + largest;
  }

  @Override
  public String explanation() {
    return "The answer is a fraction with a denominator of at most " + largest + ".";
  }

  @Override
  public boolean holds(Rational value, long[] ascending) {
    return value.denominator().bitLength() < 64 && value.denominator().longValueExact() <= largest;
  }

  @Override
  public boolean holds(long numerator, long denominator, long[] ascending) {
    return Math.abs(denominator) <= largest
        || Math.abs(denominator) / Primitive.gcd(numerator, denominator) <= largest;
  }
}
