package rootwright.algebra.enclosure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import rootwright.algebra.number.Rational;

/** Writes numbers as decimals; a half is rounded away from zero, as at school. */
public final class Decimals {

  /** Numbers with more digits before the point than this are written with a power of ten. */
  private static final int LONGEST_WHOLE_PART = 21;

  private Decimals() {}

  /**
   * The number rounded to this many significant digits, with a point: {@code -1.727272727}, {@code
   * 0.5000000000}. A number too large for its digits, or below a millionth, is written with a power
   * of ten: {@code 1.234500000e25}.
   *
   * @throws IllegalArgumentException if {@code digits} is not positive
   */
  public static String significant(Rational number, int digits) {
    if (digits < 1) {
      throw new IllegalArgumentException("number of digits must be positive: " + digits);
    }
    return written(rounded(number, digits), digits);
  }

  /** The value nearest to the number with this many significant digits. */
  static BigDecimal rounded(Rational number, int digits) {
    return new BigDecimal(number.numerator())
        .divide(
            new BigDecimal(number.denominator()), new MathContext(digits, RoundingMode.HALF_UP));
  }

  /** The multiple of 10^−places nearest to the number. */
  static BigDecimal roundedToPlaces(Rational number, int places) {
    return new BigDecimal(number.numerator())
        .divide(new BigDecimal(number.denominator()), places, RoundingMode.HALF_UP);
  }

  /** A value of at most this many digits, filled up with zeros to exactly as many. */
  static String written(BigDecimal value, int digits) {
    if (value.signum() == 0) {
      return value.setScale(Math.max(digits - 1, 1)).toPlainString();
    }
    int whole = value.precision() - value.scale();
    boolean plain = whole <= Math.min(digits, LONGEST_WHOLE_PART) && whole > -6;
    if (plain && digits > whole) {
      return value.setScale(digits - whole).toPlainString();
    }
    if (plain) {
      return value.setScale(0).toPlainString() + ".";
    }
    BigInteger figures = value.setScale(digits - whole).unscaledValue();
    String text = figures.abs().toString();
    return (figures.signum() < 0 ? "-" : "")
        + text.charAt(0)
        + "."
        + text.substring(1)
        + "e"
        + (whole - 1);
  }
}
