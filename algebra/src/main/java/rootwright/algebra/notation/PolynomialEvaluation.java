package rootwright.algebra.notation;

import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/** Multiplies a formula out to a polynomial in one unknown with rational coefficients. */
final class PolynomialEvaluation extends FormulaEvaluation<Polynomial> {

  private static final int OVERHEAD = 25;

  private final String unknown;
  private final WorkBudget budget = new WorkBudget(Limits.WORK);

  PolynomialEvaluation(String unknown) {
    this.unknown = unknown;
  }

  @Override
  Polynomial number(Formula part, Rational value) {
    return Polynomial.constant(value);
  }

  @Override
  Polynomial named(Formula part, String spelling) {
    if (!spelling.equals(unknown)) {
      throw new PartRefusedException(
          "letter-in-coefficients",
          "The letter %s stands beside the unknown %s; the coefficients must be numbers here."
              .formatted(spelling, unknown),
          part,
          "a number");
    }
    return Polynomial.X;
  }

  @Override
  Polynomial plus(Formula part, Polynomial left, Polynomial right) {
    long length = Math.max(left.degree(), right.degree()) + 1L;
    budget.spend(part, length, bits(left) + bits(right), left.denominator().bitLength(), OVERHEAD);
    return checked(part, left.plus(right));
  }

  @Override
  Polynomial negate(Polynomial value) {
    return value.negate();
  }

  @Override
  Polynomial times(Formula part, Polynomial left, Polynomial right) {
    if (left.degree() + right.degree() > Limits.DEGREE) {
      throw tooHigh(part, left.degree() + right.degree());
    }
    budget.spend(
        part, (left.degree() + 1L) * (right.degree() + 1L), bits(left), bits(right), OVERHEAD);
    return checked(part, left.times(right));
  }

  @Override
  Polynomial over(Formula part, Polynomial left, Polynomial right) {
    if (right.degree() > 0) {
      throw new PartRefusedException(
          "division-by-unknown",
          "In %s the unknown %s stands below the stroke, so this is not a polynomial."
              .formatted(PlainWriter.write(part), unknown),
          part,
          "a number below the stroke");
    }
    Rational divisor = NonZero.divisor(part, right.coefficient(0));
    return checked(part, left.times(divisor.reciprocal()));
  }

  @Override
  Polynomial power(Formula part, Polynomial base, int exponent) {
    if (base.degree() <= 0) {
      return Polynomial.constant(NumberPower.of(part, base.coefficient(0), exponent));
    }
    if (exponent < 0) {
      throw new PartRefusedException(
          "exponent",
          "The exponent %d is negative, so this is not a polynomial.".formatted(exponent),
          part,
          "an exponent from 0 up");
    }
    if ((long) base.degree() * exponent > Limits.DEGREE) {
      throw tooHigh(part, (long) base.degree() * exponent);
    }
    if (base.equals(Polynomial.X)) {
      return Polynomial.monomial(Rational.ONE, exponent);
    }
    Polynomial result = base;
    for (int bit = Integer.highestOneBit(exponent) >> 1; bit > 0; bit >>= 1) {
      result = times(part, result, result);
      if ((exponent & bit) != 0) {
        result = times(part, result, base);
      }
    }
    return result;
  }

  @Override
  String called() {
    return "a polynomial";
  }

  private static PartRefusedException tooHigh(Formula part, long degree) {
    return new PartRefusedException(
        "too-large",
        "The degree would be %d; at most %d is worked with.".formatted(degree, Limits.DEGREE),
        part,
        "a smaller degree");
  }

  private static Polynomial checked(Formula part, Polynomial value) {
    if (bits(value) > Limits.BITS) {
      throw NumberPower.tooLarge(part);
    }
    return value;
  }

  private static long bits(Polynomial polynomial) {
    long bits = polynomial.denominator().bitLength();
    for (int k = 0; k <= polynomial.degree(); k++) {
      bits = Math.max(bits, polynomial.numerator(k).bitLength());
    }
    return bits;
  }
}
