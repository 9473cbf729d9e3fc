package rootwright.composing.scan.filter;

import java.util.List;
import rootwright.algebra.number.Rational;

/**
 * The value is an integer in a range, such as 0 to 999.
 *
 * @param low the least value allowed
 * @param high the greatest value allowed, not less than {@code low}
 */
public record IntegerBetween(long low, long high) implements AnswerShape {

  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException if the range is empty
   */
  public IntegerBetween {
    if (low > high) {
      throw new IllegalArgumentException("empty range of answers: " + low + " to " + high);
    }
  }

  @Override
  public String name() {
    return "answer-between-" + low + "-and-" + high;
  }

  @Override
  public String explanation() {
    return "The answer is an integer from " + low + " to " + high + ".";
  }

  @Override
  public boolean holds(Rational value, long[] ascending) {
    return value.isInteger()
        && value.compareTo(Rational.of(low)) >= 0
        && value.compareTo(Rational.of(high)) <= 0;
  }

  @Override
  public boolean holds(long numerator, long denominator, long[] ascending) {
    long quotient = numerator / denominator;
    return low <= quotient && quotient <= high && quotient * denominator == numerator;
  }

  @Override
  public List<AnswerShape> weaker() {
    return List.of(new WholeNumber());
  }
}
