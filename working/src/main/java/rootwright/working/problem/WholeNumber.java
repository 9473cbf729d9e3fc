package rootwright.working.problem;

import java.math.BigInteger;
import java.util.Optional;
import rootwright.algebra.notation.Formula;

/** Formulas that stand for one whole number, such as 10^18 or 2·(3 + 4). */
public final class WholeNumber {

  /** Longest number that a power is worked out to, in bits. */
  private static final long MOST_BITS = 100_000;

  private WholeNumber() {}

  /** The number, if the formula stands for one and it is not too long. */
  public static Optional<BigInteger> of(Formula formula) {
    if (formula instanceof Formula.Numeral numeral) {
      return numeral.value().isInteger()
          ? Optional.of(numeral.value().numerator())
          : Optional.empty();
    } else if (formula instanceof Formula.Negative negative) {
      return of(negative.of()).map(BigInteger::negate);
    } else if (formula instanceof Formula.Sum sum) {
      return sum.terms().stream()
          .map(WholeNumber::of)
          .reduce(Optional.of(BigInteger.ZERO), (a, b) -> a.flatMap(x -> b.map(x::add)));
    } else if (formula instanceof Formula.Product product) {
      return product.factors().stream()
          .map(WholeNumber::of)
          .reduce(Optional.of(BigInteger.ONE), (a, b) -> a.flatMap(x -> b.map(x::multiply)));
    } else if (formula instanceof Formula.Power power) {
      return of(power.base()).flatMap(base -> of(power.exponent()).flatMap(e -> power(base, e)));
    }
    return Optional.empty();
  }

  private static Optional<BigInteger> power(BigInteger base, BigInteger exponent) {
    boolean short_ =
        exponent.signum() >= 0
            && exponent.bitLength() < 32
            && exponent.longValueExact() * Math.max(1, base.bitLength()) <= MOST_BITS;
    return short_ ? Optional.of(base.pow(exponent.intValueExact())) : Optional.empty();
  }
}
