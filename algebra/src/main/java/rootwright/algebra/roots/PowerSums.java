package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * The power sums S_k = Σ r^k over the roots of a polynomial, counted with multiplicity, for any
 * whole exponent k; S_0 is the degree, and 0⁰ counts as 1.
 *
 * <p>A single far value takes O(log k) products of remainders, never k steps: x^k modulo the
 * polynomial by repeated squaring, then the trace (Fiduccia, SIAM J. Computing 14 (1985) 106–112,
 * from memory). Negative exponents are those of the reciprocal roots.
 */
public final class PowerSums {

  /** The greatest number of bits of a number that is worked out exactly: 600 000 digits. */
  public static final long LONGEST_EXACT = 1L << 21;

  private final Polynomial polynomial;
  private final MonicPowers ahead;

  private PowerSums(Polynomial polynomial) {
    this.polynomial = polynomial.primitive();
    ahead = new MonicPowers(polynomial);
  }

  /**
   * The power sums of the roots of a polynomial.
   *
   * @throws IllegalArgumentException if the polynomial is constant
   */
  public static PowerSums of(Polynomial polynomial) {
    if (polynomial.degree() < 1) {
      throw new IllegalArgumentException("a constant has no roots: " + polynomial);
    }
    return new PowerSums(polynomial);
  }

  /** S_k for any whole k, or why it is not given. */
  public PowerSum exact(BigInteger exponent) {
    if (exponent.signum() < 0) {
      return polynomial.coefficient(0).isZero()
          ? new PowerSum.ZeroRoot(exponent)
          : new PowerSums(polynomial.reversed()).exact(exponent.negate());
    }
    BigInteger scale = ahead.scale();
    BigInteger underBits = exponent.multiply(BigInteger.valueOf(scale.bitLength() - 1L));
    Optional<BigInteger> scaled =
        underBits.compareTo(BigInteger.valueOf(LONGEST_EXACT)) > 0
            ? Optional.empty()
            : ahead.sum(exponent, LONGEST_EXACT);
    if (scaled.isEmpty()) {
      return new PowerSum.TooLong(exponent, LONGEST_EXACT);
    }
    BigInteger sum = scaled.get();
    return new PowerSum.Exact(
        scale.equals(BigInteger.ONE)
            ? Rational.of(sum)
            : new Rational(sum, scale.pow(exponent.intValueExact())));
  }

  /**
   * S_k, for a caller who knows that it exists.
   *
   * @throws ArithmeticException if k is negative and a root is zero, or if the value is longer than
   *     {@link #LONGEST_EXACT} bits
   */
  public Rational value(long exponent) {
    PowerSum sum = exact(BigInteger.valueOf(exponent));
    if (sum instanceof PowerSum.Exact exact) {
      return exact.value();
    }
    throw new ArithmeticException(
        sum instanceof PowerSum.ZeroRoot
            ? "a root of " + polynomial + " is zero, so S_" + exponent + " does not exist"
            : "S_" + exponent + " of " + polynomial + " has more than " + LONGEST_EXACT + " bits");
  }

  /**
   * S_0, S_1, …, S_last by Newton's identities and then the recurrence: O(n·last) steps.
   *
   * @throws IllegalArgumentException if last is negative
   */
  public List<Rational> upTo(int last) {
    if (last < 0) {
      throw new IllegalArgumentException("last exponent is negative: " + last);
    }
    BigInteger[] scaled = ahead.upTo(last);
    List<Rational> sums = new ArrayList<>(last + 1);
    BigInteger under = BigInteger.ONE;
    for (BigInteger sum : scaled) {
      sums.add(new Rational(sum, under));
      under = under.multiply(ahead.scale());
    }
    return sums;
  }

  /**
   * S_k modulo m, for any whole k: the residue of the fraction S_k, whose denominator divides a
   * power of the lead of the primitive polynomial (of its constant term for negative k). O(n² log
   * k) products.
   *
   * @throws IllegalArgumentException if m is not positive
   */
  public PowerSumResidue modulo(BigInteger exponent, BigInteger modulus) {
    if (modulus.signum() <= 0) {
      throw new IllegalArgumentException("modulus is not positive: " + modulus);
    }
    if (exponent.signum() < 0) {
      return polynomial.coefficient(0).isZero()
          ? new PowerSumResidue.ZeroRoot(exponent)
          : new PowerSums(polynomial.reversed()).modulo(exponent.negate(), modulus);
    }
    BigInteger lead = ahead.scale();
    BigInteger common = lead.gcd(modulus);
    if (!common.equals(BigInteger.ONE)) {
      return new PowerSumResidue.NoResidue(lead, common);
    }
    return new PowerSumResidue.Residue(ModularPowerSum.of(polynomial, exponent, modulus));
  }
}
