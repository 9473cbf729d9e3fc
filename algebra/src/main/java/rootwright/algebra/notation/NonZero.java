package rootwright.algebra.notation;

import rootwright.algebra.number.Rational;

/** Denominators that are not zero. */
final class NonZero {

  private NonZero() {}

  static Rational divisor(Formula part, Rational value) {
    if (value.isZero()) {
      throw refused(part);
    }
    return value;
  }

  static PartRefusedException refused(Formula part) {
    return new PartRefusedException(
        "zero-denominator",
        "The denominator in %s is zero.".formatted(PlainWriter.write(part)),
        part,
        "a denominator that is not zero");
  }
}
