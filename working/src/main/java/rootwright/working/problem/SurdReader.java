package rootwright.working.problem;

import java.math.BigInteger;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.SurdSum;

/** Formulas that stand for a number with square roots, such as (2 + i)/(1 − √3). */
public final class SurdReader {

  /** Highest power that is multiplied out. */
  private static final int HIGHEST_POWER = 20_000;

  private SurdReader() {}

  /** The number; empty if the formula has another part, a zero denominator, or too high a power. */
  public static Optional<SurdSum> of(Formula formula) {
    if (formula instanceof Formula.Numeral numeral) {
      return Optional.of(SurdSum.of(numeral.value()));
    } else if (formula instanceof Formula.ImaginaryUnit) {
      return Optional.of(SurdSum.squareRoot(Rational.MINUS_ONE));
    } else if (formula instanceof Formula.Negative negative) {
      return of(negative.of()).map(SurdSum::negate);
    } else if (formula instanceof Formula.Sum sum) {
      return sum.terms().stream()
          .map(SurdReader::of)
          .reduce(Optional.of(SurdSum.ZERO), (a, b) -> a.flatMap(x -> b.map(x::plus)));
    } else if (formula instanceof Formula.Product product) {
      return product.factors().stream()
          .map(SurdReader::of)
          .reduce(Optional.of(SurdSum.of(Rational.ONE)), (a, b) -> a.flatMap(x -> b.map(x::times)));
    } else if (formula instanceof Formula.Quotient quotient) {
      return of(quotient.over())
          .flatMap(over -> of(quotient.under()).flatMap(SurdSum::reciprocal).map(over::times));
    } else if (formula instanceof Formula.Radical radical && radical.index() == 2) {
      return of(radical.radicand())
          .filter(SurdSum::isRational)
          .map(inside -> SurdSum.squareRoot(inside.rationalPart()));
    } else if (formula instanceof Formula.Power power) {
      return of(power.base())
          .flatMap(base -> WholeNumber.of(power.exponent()).flatMap(k -> power(base, k)));
    }
    return Optional.empty();
  }

  private static Optional<SurdSum> power(SurdSum base, BigInteger exponent) {
    if (exponent.bitLength() > 31 || exponent.abs().intValue() > HIGHEST_POWER) {
      return Optional.empty();
    }
    SurdSum upright = base.power(exponent.abs().intValue());
    return exponent.signum() < 0 ? upright.reciprocal() : Optional.of(upright);
  }
}
