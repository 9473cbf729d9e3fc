package rootwright.working.surd;

import java.math.BigInteger;
import java.util.Optional;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.SurdSum;
import rootwright.working.check.second.Enclosed;

/** The whole part of a number with square roots. */
final class WholePart {

  private static final int DIGITS = 900;

  private WholePart() {}

  /**
   * The greatest whole number not above, or the least not below, a number a + b·√d, by the integer
   * square root of b²·d; empty if more square roots are in it.
   */
  static Optional<BigInteger> of(SurdSum number, boolean up) {
    if (up) {
      return of(number.negate(), false).map(BigInteger::negate);
    }
    if (!number.isReal() || number.conjugates().size() > 2) {
      return Optional.empty();
    }
    if (number.isRational()) {
      return Optional.of(number.rationalPart().floor());
    }
    BigInteger d = number.terms().lastKey();
    Rational b = number.factor(d);
    Rational a = number.rationalPart();
    BigInteger common = a.denominator().multiply(b.denominator());
    BigInteger overA = a.times(Rational.of(common)).numerator();
    BigInteger overB = b.times(Rational.of(common)).numerator();
    BigInteger root = overB.multiply(overB).multiply(d).sqrt();
    // The square root is no whole number, so −√n lies above −(root + 1).
    BigInteger low = overB.signum() > 0 ? root : root.add(BigInteger.ONE).negate();
    BigInteger[] parts = overA.add(low).divideAndRemainder(common);
    return Optional.of(parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0]);
  }

  /** Whether an enclosure of the formula lies between the whole number and its neighbour. */
  static boolean agrees(BigInteger whole, Formula formula, boolean up) {
    RealBall ball = Enclosed.of(formula, DIGITS).real();
    Rational low = ball.low().toRational();
    Rational high = ball.high().toRational();
    Rational bottom = Rational.of(up ? whole.subtract(BigInteger.ONE) : whole);
    return bottom.compareTo(low) <= 0 && high.compareTo(bottom.plus(Rational.ONE)) <= 0;
  }
}
