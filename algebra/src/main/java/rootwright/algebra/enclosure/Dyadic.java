package rootwright.algebra.enclosure;

import java.math.BigInteger;
import rootwright.algebra.number.Rational;

/**
 * A whole number times a power of two, the number a binary computer holds exactly. The mantissa is
 * odd or both parts are zero, so that equality of records is equality of numbers.
 *
 * @param mantissa odd after construction, or zero
 * @param exponent the power of two; zero for the number zero
 */
public record Dyadic(BigInteger mantissa, int exponent) implements Comparable<Dyadic> {

  public static final Dyadic ZERO = new Dyadic(BigInteger.ZERO, 0);
  public static final Dyadic ONE = new Dyadic(BigInteger.ONE, 0);

  /** Where to go when a number has more bits than are wanted. */
  public enum Rounding {
    /** Towards −∞. */
    FLOOR,
    /** Towards +∞. */
    CEILING
  }

  /** Removes trailing zero bits of the mantissa. */
  public Dyadic {
    if (mantissa.signum() == 0) {
      exponent = 0;
    } else if (!mantissa.testBit(0)) {
      int zeros = mantissa.getLowestSetBit();
      mantissa = mantissa.shiftRight(zeros);
      exponent = Math.addExact(exponent, zeros);
    }
  }

  /** A whole number. */
  public static Dyadic of(long integer) {
    return new Dyadic(BigInteger.valueOf(integer), 0);
  }

  /** A whole number. */
  public static Dyadic of(BigInteger integer) {
    return new Dyadic(integer, 0);
  }

  /** 2^k. */
  public static Dyadic powerOfTwo(int k) {
    return new Dyadic(BigInteger.ONE, k);
  }

  /**
   * The quotient of two numbers, correct to the wanted number of significant bits.
   *
   * @throws ArithmeticException if the divisor is zero
   * @throws IllegalArgumentException if {@code bits} is not positive
   */
  public static Dyadic quotient(Dyadic over, Dyadic under, int bits, Rounding rounding) {
    requirePositive(bits);
    if (under.isZero()) {
      throw new ArithmeticException("division of " + over + " by zero");
    }
    int shift =
        Math.max(0, bits + 2 + under.mantissa.bitLength() - over.mantissa.abs().bitLength());
    BigInteger[] parts = over.mantissa.shiftLeft(shift).divideAndRemainder(under.mantissa);
    BigInteger quotient = parts[0].shiftLeft(1);
    if (parts[1].signum() != 0) {
      // One more bit that says "a little further from zero", so that the last rounding is right.
      int sign = over.mantissa.signum() * under.mantissa.signum();
      quotient = quotient.add(BigInteger.valueOf(sign));
    }
    return new Dyadic(quotient, over.exponent - under.exponent - shift - 1).rounded(bits, rounding);
  }

  /**
   * A rational number to the wanted number of significant bits; exact if it fits.
   *
   * @throws IllegalArgumentException if {@code bits} is not positive
   */
  public static Dyadic of(Rational number, int bits, Rounding rounding) {
    if (number.isInteger()) {
      return of(number.numerator()).rounded(bits, rounding);
    }
    return quotient(of(number.numerator()), of(number.denominator()), bits, rounding);
  }

  /** The sum, exact. */
  public Dyadic plus(Dyadic other) {
    if (isZero()) {
      return other;
    }
    if (other.isZero()) {
      return this;
    }
    int least = Math.min(exponent, other.exponent);
    return new Dyadic(
        mantissa.shiftLeft(exponent - least).add(other.mantissa.shiftLeft(other.exponent - least)),
        least);
  }

  /** The difference, exact. */
  public Dyadic minus(Dyadic other) {
    return plus(other.negate());
  }

  /** The product, exact. */
  public Dyadic times(Dyadic other) {
    return new Dyadic(mantissa.multiply(other.mantissa), Math.addExact(exponent, other.exponent));
  }

  /** The number times 2^k. */
  public Dyadic scaled(int k) {
    return isZero() ? this : new Dyadic(mantissa, Math.addExact(exponent, k));
  }

  /** The number with the other sign. */
  public Dyadic negate() {
    return new Dyadic(mantissa.negate(), exponent);
  }

  /** The distance from zero. */
  public Dyadic absolute() {
    return signum() < 0 ? negate() : this;
  }

  /** −1, 0 or 1. */
  public int signum() {
    return mantissa.signum();
  }

  /** Whether the number is zero. */
  public boolean isZero() {
    return mantissa.signum() == 0;
  }

  /** The least k with |number| &lt; 2^k; {@link Integer#MIN_VALUE} for zero. */
  public int top() {
    return isZero() ? Integer.MIN_VALUE : mantissa.abs().bitLength() + exponent;
  }

  /**
   * The number with at most this many significant bits.
   *
   * @throws IllegalArgumentException if {@code bits} is not positive
   */
  public Dyadic rounded(int bits, Rounding rounding) {
    requirePositive(bits);
    int surplus = mantissa.abs().bitLength() - bits;
    return surplus <= 0 ? this : roundedTo(exponent + surplus, rounding);
  }

  /** The nearest multiple of 2^k on the side wanted. */
  public Dyadic roundedTo(int k, Rounding rounding) {
    if (exponent >= k) {
      return this;
    }
    // The mantissa is odd, so something is always cut off and the ceiling is the floor plus one.
    BigInteger floor = mantissa.shiftRight(k - exponent);
    return new Dyadic(rounding == Rounding.FLOOR ? floor : floor.add(BigInteger.ONE), k);
  }

  /**
   * The square root of a number that is not negative, to the wanted number of significant bits.
   *
   * @throws ArithmeticException if the number is negative
   * @throws IllegalArgumentException if {@code bits} is not positive
   */
  public Dyadic squareRoot(int bits, Rounding rounding) {
    requirePositive(bits);
    if (signum() < 0) {
      throw new ArithmeticException("square root of the negative number " + this);
    }
    int shift = Math.max(0, 2 * bits + 2 - mantissa.bitLength());
    if (((exponent - shift) & 1) != 0) {
      shift++;
    }
    BigInteger[] parts = mantissa.shiftLeft(shift).sqrtAndRemainder();
    BigInteger root = parts[0].shiftLeft(1);
    if (parts[1].signum() != 0) {
      root = root.add(BigInteger.ONE);
    }
    return new Dyadic(root, (exponent - shift) / 2 - 1).rounded(bits, rounding);
  }

  /**
   * The k-th root of a number that is not negative, to the wanted number of significant bits.
   *
   * @throws ArithmeticException if the number is negative
   * @throws IllegalArgumentException if {@code k} or {@code bits} is not positive
   */
  public Dyadic root(int k, int bits, Rounding rounding) {
    requirePositive(bits);
    if (k < 1) {
      throw new IllegalArgumentException("index of a root must be positive: " + k);
    }
    if (signum() < 0) {
      throw new ArithmeticException("root of the negative number " + this);
    }
    if (isZero()) {
      return ZERO;
    }
    int shift = Math.max(0, Math.multiplyExact(k, bits + 2) - mantissa.bitLength());
    shift += Math.floorMod(exponent - shift, k);
    BigInteger radicand = mantissa.shiftLeft(shift);
    BigInteger floor = floorOfRoot(radicand, k);
    BigInteger root = floor.shiftLeft(1);
    if (!floor.pow(k).equals(radicand)) {
      root = root.add(BigInteger.ONE);
    }
    return new Dyadic(root, (exponent - shift) / k - 1).rounded(bits, rounding);
  }

  /** Newton's iteration from above falls until it reaches the floor of the root. */
  private static BigInteger floorOfRoot(BigInteger radicand, int k) {
    BigInteger order = BigInteger.valueOf(k);
    BigInteger less = BigInteger.valueOf(k - 1L);
    BigInteger root = BigInteger.ONE.shiftLeft((radicand.bitLength() + k - 1) / k);
    while (true) {
      BigInteger next = root.multiply(less).add(radicand.divide(root.pow(k - 1))).divide(order);
      if (next.compareTo(root) >= 0) {
        return root;
      }
      root = next;
    }
  }

  /** The same number as a quotient of integers. */
  public Rational toRational() {
    return exponent >= 0
        ? Rational.of(mantissa.shiftLeft(exponent))
        : new Rational(mantissa, BigInteger.ONE.shiftLeft(-exponent));
  }

  @Override
  public int compareTo(Dyadic other) {
    if (signum() != other.signum()) {
      return Integer.compare(signum(), other.signum());
    }
    if (top() != other.top()) {
      return signum() > 0
          ? Integer.compare(top(), other.top())
          : Integer.compare(other.top(), top());
    }
    return minus(other).signum();
  }

  /** {@code 5*2^-3}: for a programmer's eye. */
  @Override
  public String toString() {
    return exponent == 0 ? mantissa.toString() : mantissa + "*2^" + exponent;
  }

  private static void requirePositive(int bits) {
    if (bits < 1) {
      throw new IllegalArgumentException("number of bits must be positive: " + bits);
    }
  }
}
