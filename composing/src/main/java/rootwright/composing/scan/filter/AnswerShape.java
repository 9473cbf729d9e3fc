package rootwright.composing.scan.filter;

import java.math.BigInteger;
import java.util.List;
import rootwright.algebra.number.Rational;

/** What the value of the expression should look like. */
public interface AnswerShape {

  /** A short hyphenated name that tells this shape from every other. */
  String name();

  /** The wish as a sentence. */
  String explanation();

  /**
   * Whether a value has the shape.
   *
   * @param ascending the coefficients of the candidate, constant term first
   */
  boolean holds(Rational value, long[] ascending);

  /**
   * The same for a quotient that need not be in lowest terms.
   *
   * @param numerator at most 2⁶² in size
   * @param denominator not zero and at most 2⁶² in size
   */
  default boolean holds(long numerator, long denominator, long[] ascending) {
    return holds(
        new Rational(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator)), ascending);
  }

  /** Shapes that ask for less, the nearest first. */
  default List<AnswerShape> weaker() {
    return List.of();
  }
}
