package rootwright.algebra.enclosure;

import java.math.BigDecimal;
import java.util.Optional;
import rootwright.algebra.enclosure.Dyadic.Rounding;
import rootwright.algebra.number.Rational;
import rootwright.algebra.number.RepeatedSquaring;

/**
 * A closed interval of the real line given by its middle and half its length: some number is known
 * to lie within {@code radius} of {@code centre}.
 *
 * <p>Sums and products of exact balls are exact. Otherwise the centre is kept about as long as the
 * radius makes meaningful and the radius grows by what was cut off.
 *
 * @param centre the middle
 * @param radius half the length, not negative
 */
public record RealBall(Dyadic centre, Dyadic radius) {

  public static final RealBall ZERO = exact(Dyadic.ZERO);
  public static final RealBall ONE = exact(Dyadic.ONE);

  /** Bits of the centre kept below the leading bit of the radius. */
  static final int SPARE_BITS = 30;

  /**
   * Checks the radius.
   *
   * @throws IllegalArgumentException if the radius is negative
   */
  public RealBall {
    if (radius.signum() < 0) {
      throw new IllegalArgumentException("radius of a ball is negative: " + radius);
    }
  }

  /** The number itself. */
  public static RealBall exact(Dyadic number) {
    return new RealBall(number, Dyadic.ZERO);
  }

  /** The number itself. */
  public static RealBall exact(long number) {
    return exact(Dyadic.of(number));
  }

  /**
   * A ball round a rational number with this many significant bits; exact if it fits.
   *
   * @throws IllegalArgumentException if {@code bits} is not positive
   */
  public static RealBall of(Rational number, int bits) {
    Dyadic below = Dyadic.of(number, bits, Rounding.FLOOR);
    if (number.isInteger() && below.equals(Dyadic.of(number.numerator()))) {
      return exact(below);
    }
    return between(below, Dyadic.of(number, bits, Rounding.CEILING));
  }

  /**
   * The ball from {@code low} to {@code high}.
   *
   * @throws IllegalArgumentException if {@code low > high}
   */
  public static RealBall between(Dyadic low, Dyadic high) {
    return new RealBall(low.plus(high).scaled(-1), high.minus(low).scaled(-1));
  }

  /** The ball with its radius as a few bits and its centre as long as that makes meaningful. */
  static RealBall trimmed(Dyadic centre, Magnitude radius) {
    if (radius.isZero()) {
      return exact(centre);
    }
    int last = radius.top() - SPARE_BITS;
    if (centre.exponent() >= last) {
      return new RealBall(centre, radius.toDyadic());
    }
    return new RealBall(
        centre.roundedTo(last, Rounding.FLOOR),
        radius.plusUp(Magnitude.powerOfTwo(last)).toDyadic());
  }

  /** The least number of the ball. */
  public Dyadic low() {
    return centre.minus(radius);
  }

  /** The greatest number of the ball. */
  public Dyadic high() {
    return centre.plus(radius);
  }

  /** Whether the ball is one number. */
  public boolean isExact() {
    return radius.isZero();
  }

  /** All sums. */
  public RealBall plus(RealBall other) {
    return trimmed(
        centre.plus(other.centre), Magnitude.up(radius).plusUp(Magnitude.up(other.radius)));
  }

  /** All differences. */
  public RealBall minus(RealBall other) {
    return plus(other.negate());
  }

  /** The ball mirrored at zero. */
  public RealBall negate() {
    return new RealBall(centre.negate(), radius);
  }

  /** All products. */
  public RealBall times(RealBall other) {
    Magnitude own = Magnitude.up(radius);
    Magnitude foreign = Magnitude.up(other.radius);
    return trimmed(
        centre.times(other.centre),
        Magnitude.up(centre)
            .timesUp(foreign)
            .plusUp(own.timesUp(Magnitude.up(other.centre)))
            .plusUp(own.timesUp(foreign)));
  }

  /**
   * All quotients, to this many significant bits where the operands allow it.
   *
   * @throws BallContainsZeroException if the divisor contains zero
   * @throws IllegalArgumentException if {@code bits} is not positive
   */
  public RealBall over(RealBall divisor, int bits) {
    if (divisor.containsZero()) {
      throw new BallContainsZeroException(divisor.toString());
    }
    Dyadic quotient = Dyadic.quotient(centre, divisor.centre, bits, Rounding.FLOOR);
    // |x/y − a/b| ≤ (|x − a| + |a/b|·|b − y|) / |y| for centres a, b and points x, y.
    Magnitude least = Magnitude.down(divisor.centre.absolute().minus(divisor.radius));
    Magnitude spread =
        Magnitude.up(radius)
            .plusUp(
                Magnitude.up(quotient)
                    .plusUp(lastPlace(quotient, bits))
                    .timesUp(Magnitude.up(divisor.radius)))
            .overUp(least);
    boolean exact = quotient.times(divisor.centre).equals(centre);
    return trimmed(quotient, exact ? spread : spread.plusUp(lastPlace(quotient, bits)));
  }

  private static Magnitude lastPlace(Dyadic quotient, int bits) {
    return quotient.isZero() ? Magnitude.ZERO : Magnitude.powerOfTwo(quotient.top() - bits);
  }

  /**
   * All powers with this exponent, by repeated squaring; x⁰ = 1.
   *
   * @throws IllegalArgumentException if the exponent is negative
   */
  public RealBall power(int exponent) {
    return RepeatedSquaring.power(this, exponent, ONE, (left, right) -> left.times(right));
  }

  /**
   * The square roots of all numbers of the ball; a ball that reaches below zero is taken from zero
   * on, because the number meant is known not to be negative.
   *
   * @throws ArithmeticException if the whole ball is negative
   * @throws IllegalArgumentException if {@code bits} is not positive
   */
  public RealBall squareRoot(int bits) {
    Dyadic low = low().signum() < 0 && !isNegative() ? Dyadic.ZERO : low();
    return between(low.squareRoot(bits, Rounding.FLOOR), high().squareRoot(bits, Rounding.CEILING));
  }

  /**
   * The k-th roots of all numbers of the ball; a ball that reaches below zero is taken from zero
   * on, because the number meant is known not to be negative.
   *
   * @throws ArithmeticException if the whole ball is negative
   * @throws IllegalArgumentException if {@code k} or {@code bits} is not positive
   */
  public RealBall root(int k, int bits) {
    Dyadic low = low().signum() < 0 && !isNegative() ? Dyadic.ZERO : low();
    return between(low.root(k, bits, Rounding.FLOOR), high().root(k, bits, Rounding.CEILING));
  }

  /** Whether the number lies in the ball. */
  public boolean contains(Rational number) {
    return low().toRational().compareTo(number) <= 0 && high().toRational().compareTo(number) >= 0;
  }

  /** Whether zero lies in the ball. */
  public boolean containsZero() {
    return centre.absolute().compareTo(radius) <= 0;
  }

  /** Whether every number of the ball is positive. */
  public boolean isPositive() {
    return centre.compareTo(radius) > 0;
  }

  /** Whether every number of the ball is negative. */
  public boolean isNegative() {
    return negate().isPositive();
  }

  /** Whether the two balls have a number in common. */
  public boolean overlaps(RealBall other) {
    return centre.minus(other.centre).absolute().compareTo(radius.plus(other.radius)) <= 0;
  }

  /**
   * The number as a decimal with at most this many significant digits, all of them certain: every
   * number of the ball rounds to what is written. Around zero, where no significant digit is known,
   * as many zeros after the point as are certain. Empty if not even one digit is certain.
   *
   * @throws IllegalArgumentException if {@code digits} is not positive
   */
  public Optional<String> decimal(int digits) {
    if (digits < 1) {
      throw new IllegalArgumentException("number of digits must be positive: " + digits);
    }
    Rational low = low().toRational();
    Rational high = high().toRational();
    if (containsZero() && !isExact()) {
      return zeros(low, high, digits);
    }
    for (int certain = digits; certain > 0; certain--) {
      BigDecimal rounded = Decimals.rounded(low, certain);
      if (rounded.compareTo(Decimals.rounded(high, certain)) == 0) {
        return Optional.of(Decimals.written(rounded, certain));
      }
    }
    return Optional.empty();
  }

  /**
   * The number rounded to exactly this many significant digits, if every number of the ball rounds
   * to the same.
   *
   * @throws IllegalArgumentException if {@code digits} is not positive
   */
  public Optional<String> significant(int digits) {
    String low = Decimals.significant(low().toRational(), digits);
    return low.equals(Decimals.significant(high().toRational(), digits))
        ? Optional.of(low)
        : Optional.empty();
  }

  private static Optional<String> zeros(Rational low, Rational high, int digits) {
    for (int places = digits; places > 0; places--) {
      BigDecimal rounded = Decimals.roundedToPlaces(low, places);
      if (rounded.signum() == 0 && Decimals.roundedToPlaces(high, places).signum() == 0) {
        return Optional.of(rounded.toPlainString());
      }
    }
    return Optional.empty();
  }

  /** {@code centre ± radius}: for a programmer's eye. */
  @Override
  public String toString() {
    return centre + " ± " + radius;
  }
}
