package rootwright.composing.scan.filter;

import java.util.List;
import rootwright.algebra.number.Rational;

/** The value is an integer. */
public record WholeNumber() implements AnswerShape {

  @Override
  public String name() {
    return "answer-integer";
  }

  @Override
  public String explanation() {
    return "The answer is an integer.";
  }

  @Override
  public boolean holds(Rational value, long[] ascending) {
    return value.isInteger();
  }

  @Override
  public boolean holds(long numerator, long denominator, long[] ascending) {
    return numerator % denominator == 0;
  }

  @Override
  public List<AnswerShape> weaker() {
    return List.of(new SmallDenominator(2), new SmallDenominator(6));
  }
}
