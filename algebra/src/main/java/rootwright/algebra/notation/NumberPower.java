package rootwright.algebra.notation;

import rootwright.algebra.number.Rational;

/** Powers of numbers whose size is known before they are computed. */
final class NumberPower {

  private NumberPower() {}

  /** The power, refused if it would have more than {@link Limits#BITS} binary digits. */
  static Rational of(Formula part, Rational base, int exponent) {
    if (base.isZero() && exponent < 0) {
      throw NonZero.refused(part);
    }
    long bits = Math.max(base.numerator().bitLength(), base.denominator().bitLength()) - 1L;
    if (bits * Math.abs((long) exponent) > Limits.BITS) {
      throw tooLarge(part);
    }
    return base.power(exponent);
  }

  static PartRefusedException tooLarge(Formula part) {
    return new PartRefusedException(
        "too-large",
        "The numbers grow beyond %d binary digits here.".formatted(Limits.BITS),
        part,
        "smaller numbers");
  }
}
