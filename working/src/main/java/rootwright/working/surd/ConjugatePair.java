package rootwright.working.surd;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.algebra.value.SurdSum;

/**
 * A number a + b·√d and its conjugate a − b·√d, whose sum and product are whole.
 *
 * @param number a + b·√d
 * @param conjugate a − b·√d
 * @param halved whether the number is the square of the base, so that exponents are half as large
 */
record ConjugatePair(SurdSum number, SurdSum conjugate, boolean halved) {

  /** The pair of a number, or of its square where only that is quadratic and the power is even. */
  static Optional<ConjugatePair> of(SurdSum base, BigInteger exponent) {
    Optional<ConjugatePair> direct = pair(base, false);
    return direct.isPresent() || exponent.testBit(0) ? direct : pair(base.times(base), true);
  }

  private static Optional<ConjugatePair> pair(SurdSum number, boolean halved) {
    if (!number.isReal() || number.conjugates().size() != 2) {
      return Optional.empty();
    }
    ConjugatePair pair = new ConjugatePair(number, number.conjugates().get(1), halved);
    return pair.sum().isInteger() && pair.product().isInteger()
        ? Optional.of(pair)
        : Optional.empty();
  }

  Rational sum() {
    return number.plus(conjugate).rationalPart();
  }

  Rational product() {
    return number.times(conjugate).rationalPart();
  }

  /** x² − sum·x + product. */
  Polynomial polynomial() {
    return Polynomial.ofAscending(List.of(product(), sum().negate(), Rational.ONE));
  }

  BigInteger index(BigInteger exponent) {
    return halved ? exponent.shiftRight(1) : exponent;
  }

  /** Whether |conjugate| is below 1. */
  boolean conjugateVanishes() {
    SurdSum one = SurdSum.of(Rational.ONE);
    return one.minus(conjugate).signum() > 0 && one.plus(conjugate).signum() > 0;
  }

  /** Whether the conjugate's power with this index is positive. */
  boolean conjugatePowerIsPositive(BigInteger index) {
    return conjugate.signum() > 0 || !index.testBit(0);
  }

  static Formula written(SurdSum quadratic) {
    return NormalForm.of(
        QuadraticSurd.of(
                quadratic.rationalPart(),
                quadratic.factor(quadratic.terms().lastKey()),
                quadratic.terms().lastKey())
            .toFormula());
  }
}
