package rootwright.algebra.number;

import java.math.BigInteger;

/**
 * A rational number in lowest terms with a positive denominator, so that equality of records is
 * equality of numbers.
 *
 * @param numerator any integer
 * @param denominator positive after construction; any non-zero integer may be passed in
 */
public record Rational(BigInteger numerator, BigInteger denominator)
    implements Comparable<Rational> {

  public static final Rational ZERO = new Rational(BigInteger.ZERO, BigInteger.ONE);
  public static final Rational ONE = new Rational(BigInteger.ONE, BigInteger.ONE);
  public static final Rational MINUS_ONE = new Rational(BigInteger.ONE.negate(), BigInteger.ONE);
  public static final Rational TWO = of(2);

  /**
   * Reduces to lowest terms.
   *
   * @throws ArithmeticException if the denominator is zero
   */
  public Rational {
    if (!denominator.equals(BigInteger.ONE)) {
      if (denominator.signum() == 0) {
        throw new ArithmeticException("denominator is zero: " + numerator + "/0");
      }
      BigInteger common = numerator.gcd(denominator);
      if (denominator.signum() < 0) {
        common = common.negate();
      }
      if (!common.equals(BigInteger.ONE)) {
        numerator = numerator.divide(common);
        denominator = denominator.divide(common);
      }
    }
  }

  /** The integer as a rational number. */
  public static Rational of(long integer) {
    return new Rational(BigInteger.valueOf(integer), BigInteger.ONE);
  }

  /** The integer as a rational number. */
  public static Rational of(BigInteger integer) {
    return new Rational(integer, BigInteger.ONE);
  }

  /**
   * The quotient of two integers.
   *
   * @throws ArithmeticException if the denominator is zero
   */
  public static Rational of(long numerator, long denominator) {
    return new Rational(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
  }

  /**
   * Reads what {@link #toString()} writes: {@code 7}, {@code -19/11}.
   *
   * @throws NumberFormatException if the text is not an integer or a quotient of two integers
   */
  public static Rational parse(String text) {
    int bar = text.indexOf('/');
    if (bar < 0) {
      return of(new BigInteger(text));
    }
    return new Rational(
        new BigInteger(text.substring(0, bar)), new BigInteger(text.substring(bar + 1)));
  }

  /** The sum. */
  public Rational plus(Rational other) {
    if (denominator.equals(other.denominator)) {
      return new Rational(numerator.add(other.numerator), denominator);
    }
    return new Rational(
        numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
        denominator.multiply(other.denominator));
  }

  /** The difference. */
  public Rational minus(Rational other) {
    return plus(other.negate());
  }

  /** The product. */
  public Rational times(Rational other) {
    return new Rational(
        numerator.multiply(other.numerator), denominator.multiply(other.denominator));
  }

  /** The product with an integer. */
  public Rational times(long factor) {
    return new Rational(numerator.multiply(BigInteger.valueOf(factor)), denominator);
  }

  /**
   * The quotient.
   *
   * @throws ArithmeticException if the divisor is zero
   */
  public Rational over(Rational divisor) {
    return new Rational(
        numerator.multiply(divisor.denominator), denominator.multiply(divisor.numerator));
  }

  /** The number with the other sign. */
  public Rational negate() {
    return new Rational(numerator.negate(), denominator);
  }

  /**
   * One over the number.
   *
   * @throws ArithmeticException if the number is zero
   */
  public Rational reciprocal() {
    return new Rational(denominator, numerator);
  }

  /**
   * The power with a whole-number exponent; 0⁰ = 1.
   *
   * @throws ArithmeticException if the number is zero and the exponent negative
   */
  public Rational power(int exponent) {
    return exponent >= 0
        ? new Rational(numerator.pow(exponent), denominator.pow(exponent))
        : reciprocal().power(Math.negateExact(exponent));
  }

  /** The distance from zero. */
  public Rational absolute() {
    return signum() < 0 ? negate() : this;
  }

  /** −1, 0 or 1. */
  public int signum() {
    return numerator.signum();
  }

  /** Whether the number is zero. */
  public boolean isZero() {
    return numerator.signum() == 0;
  }

  /** Whether the number is one. */
  public boolean isOne() {
    return equals(ONE);
  }

  /** Whether the denominator is one. */
  public boolean isInteger() {
    return denominator.equals(BigInteger.ONE);
  }

  /**
   * The number as an {@code int}.
   *
   * @throws ArithmeticException if it is not an integer or does not fit
   */
  public int intValueExact() {
    if (!isInteger()) {
      throw new ArithmeticException("not an integer: " + this);
    }
    return numerator.intValueExact();
  }

  /** The greatest integer that is not greater than this number. */
  public BigInteger floor() {
    BigInteger[] parts = numerator.divideAndRemainder(denominator);
    return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
  }

  @Override
  public int compareTo(Rational other) {
    return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
  }

  /** {@code 7} or {@code -19/11}: what {@link #parse} reads. */
  @Override
  public String toString() {
    return isInteger() ? numerator.toString() : numerator + "/" + denominator;
  }
}
