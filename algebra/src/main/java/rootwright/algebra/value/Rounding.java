package rootwright.algebra.value;

import java.util.Optional;
import rootwright.algebra.enclosure.Decimals;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.number.Rational;

/** Writes exact values as decimals. */
final class Rounding {

  private static final int SPARE_DIGITS = 60;

  private Rounding() {}

  /** A real irrational number: some enclosure lies between two midpoints of decimals. */
  static String ofIrrational(ExactValue number, int digits) {
    for (int tried = digits + 5; ; tried *= 2) {
      Optional<String> text = number.enclosure(tried).real().significant(digits);
      if (text.isPresent()) {
        return text.get();
      }
    }
  }

  /** A rational number; without a point if it is whole. */
  static String ofRational(Rational number, int digits) {
    return number.isInteger() ? number.toString() : Decimals.significant(number, digits);
  }

  /** A number that is not real and of which nothing is known but its enclosures. */
  static String ofComplex(ExactValue number, int digits) {
    String real = ofPart(number.enclosure(digits + SPARE_DIGITS).real(), digits);
    RealBall imaginary = number.enclosure(digits + SPARE_DIGITS).imaginary();
    RealBall height = imaginary.isNegative() ? imaginary.negate() : imaginary;
    return joined(real, imaginary.isNegative() ? -1 : 1, ofPart(height, digits));
  }

  private static String ofPart(RealBall part, int digits) {
    if (part.containsZero()) {
      return "";
    }
    return part.significant(digits)
        .orElseGet(() -> Decimals.significant(part.centre().toRational(), digits));
  }

  /** {@code real ± imaginary*i}; an empty real part stands for zero. */
  static String joined(String real, int sign, String imaginary) {
    String unit = imaginary.equals("1") ? "i" : imaginary + "*i";
    if (real.isEmpty()) {
      return sign < 0 ? "-" + unit : unit;
    }
    return real + (sign < 0 ? " - " : " + ") + unit;
  }
}
