package rootwright.working.clothing;

import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.WholeNumber;

/**
 * A fraction of two polynomials in one letter as it comes from a formula, nothing cancelled.
 *
 * @param over above the stroke
 * @param under the product of all that stood below a stroke; not zero
 */
record Fractions(Polynomial over, Polynomial under) {

  /** The formula as a fraction; empty if another name or a root sign is in it. */
  static Optional<Fractions> of(Formula formula, String letter) {
    if (formula instanceof Formula.Numeral numeral) {
      return Optional.of(constant(numeral.value()));
    } else if (formula.equals(Formula.name(letter))) {
      return Optional.of(new Fractions(Polynomial.X, Polynomial.ONE));
    } else if (formula instanceof Formula.Negative negative) {
      return of(negative.of(), letter).map(f -> new Fractions(f.over.negate(), f.under));
    } else if (formula instanceof Formula.Sum sum) {
      return sum.terms().stream()
          .map(term -> of(term, letter))
          .reduce(Optional.of(constant(Rational.ZERO)), (a, b) -> a.flatMap(x -> b.map(x::plus)));
    } else if (formula instanceof Formula.Product product) {
      return product.factors().stream()
          .map(factor -> of(factor, letter))
          .reduce(Optional.of(constant(Rational.ONE)), (a, b) -> a.flatMap(x -> b.map(x::times)));
    } else if (formula instanceof Formula.Quotient quotient) {
      return of(quotient.over(), letter)
          .flatMap(
              over ->
                  of(quotient.under(), letter)
                      .filter(under -> !under.over.isZero())
                      .map(
                          under ->
                              new Fractions(
                                  over.over.times(under.under), over.under.times(under.over))));
    } else if (formula instanceof Formula.Power power) {
      return WholeNumber.of(power.exponent())
          .filter(k -> k.signum() >= 0 && k.bitLength() < 6)
          .flatMap(
              k ->
                  of(power.base(), letter)
                      .map(
                          base ->
                              new Fractions(
                                  base.over.power(k.intValue()), base.under.power(k.intValue()))));
    }
    return Optional.empty();
  }

  private static Fractions constant(Rational value) {
    return new Fractions(Polynomial.constant(value), Polynomial.ONE);
  }

  private Fractions plus(Fractions other) {
    Polynomial common = under.gcd(other.under);
    Polynomial own = under.divide(common).quotient();
    Polynomial foreign = other.under.divide(common).quotient();
    return new Fractions(over.times(foreign).plus(other.over.times(own)), own.times(other.under));
  }

  private Fractions times(Fractions other) {
    return new Fractions(over.times(other.over), under.times(other.under));
  }
}
