package rootwright.algebra.notation;

import java.math.BigInteger;
import rootwright.algebra.number.Rational;

/** Exponents that are whole numbers, perhaps computed: {@code x^(2*3)}. */
final class Exponent {

  private Exponent() {}

  /** The exponent of a power, between −{@link Limits#BITS} and {@link Limits#BITS}. */
  static int of(Formula.Power power) {
    Rational value = new ConstantEvaluation(power).valueOf(power.exponent());
    if (!value.isInteger()) {
      throw new PartRefusedException(
          "exponent",
          "The exponent %s is not a whole number.".formatted(PlainWriter.write(power.exponent())),
          power.exponent(),
          "a whole number");
    }
    if (value.numerator().abs().compareTo(BigInteger.valueOf(Limits.BITS)) > 0) {
      throw new PartRefusedException(
          "too-large",
          "The exponent %s is too large to multiply out; at most degree %d is worked with."
              .formatted(shortened(value.toString()), Limits.DEGREE),
          power,
          "a smaller exponent");
    }
    return value.intValueExact();
  }

  private static String shortened(String digits) {
    return digits.length() > 24 ? digits.substring(0, 20) + "…" : digits;
  }
}
