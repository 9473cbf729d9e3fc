package rootwright.working.step;

import rootwright.algebra.number.Rational;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;

/** Numbers among which solutions are sought. */
public enum NumberDomain {
  COMPLEX("complex numbers"),
  REAL("real numbers"),
  POSITIVE("positive real numbers"),
  NEGATIVE("negative real numbers"),
  RATIONAL("rational numbers"),
  INTEGER("integers"),
  POSITIVE_INTEGER("positive integers");

  private static final ExactValue ZERO = new RationalValue(Rational.ZERO);

  private final String words;

  NumberDomain(String words) {
    this.words = words;
  }

  /** What the numbers are called, in the plural. */
  public String words() {
    return words;
  }

  /** Whether the number is one of them. */
  public boolean contains(ExactValue value) {
    return switch (this) {
      case COMPLEX -> true;
      case REAL -> value.isReal();
      case POSITIVE -> value.isReal() && ExactValues.compareReal(value, ZERO) > 0;
      case NEGATIVE -> value.isReal() && ExactValues.compareReal(value, ZERO) < 0;
      case RATIONAL -> value instanceof RationalValue;
      case INTEGER -> isInteger(value);
      case POSITIVE_INTEGER -> isInteger(value) && ExactValues.compareReal(value, ZERO) > 0;
    };
  }

  private static boolean isInteger(ExactValue value) {
    return value instanceof RationalValue rational && rational.number().isInteger();
  }
}
