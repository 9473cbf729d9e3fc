package rootwright.composing.scan.filter;

import rootwright.algebra.number.Rational;

/** The value is not zero, which is too easily guessed. */
public record NonZero() implements AnswerShape {

  @Override
  public String name() {
    return "answer-not-zero";
  }

  @Override
  public String explanation() {
    return "The answer is not zero.";
  }

  @Override
  public boolean holds(Rational value, long[] ascending) {
    return !value.isZero();
  }

  @Override
  public boolean holds(long numerator, long denominator, long[] ascending) {
    return numerator != 0;
  }
}
