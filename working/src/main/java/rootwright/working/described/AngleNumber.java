package rootwright.working.described;

import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.working.problem.Angle;

/**
 * A number factor·f(q·π) or factor·f(q·π)², f a function of angles.
 *
 * @param factor not zero
 * @param power 1 or 2
 * @param turn q
 */
record AngleNumber(Rational factor, String function, int power, Rational turn) {

  /** The formula as such a number, if it is one. */
  static Optional<AngleNumber> of(Formula formula) {
    if (formula instanceof Formula.Application application) {
      return Angle.argument(application)
          .map(q -> new AngleNumber(Rational.ONE, application.function(), 1, q));
    } else if (formula instanceof Formula.Power power
        && power.exponent().equals(Formula.number(2))) {
      return of(power.base())
          .filter(base -> base.power() == 1 && base.factor().isOne())
          .map(base -> new AngleNumber(Rational.ONE, base.function(), 2, base.turn()));
    } else if (formula instanceof Formula.Negative negative) {
      return of(negative.of()).map(of -> of.times(Rational.MINUS_ONE));
    } else if (formula instanceof Formula.Product product
        && product.factors().size() == 2
        && product.factors().get(0) instanceof Formula.Numeral numeral
        && !numeral.value().isZero()) {
      return of(product.factors().get(1)).map(of -> of.times(numeral.value()));
    }
    return Optional.empty();
  }

  private AngleNumber times(Rational other) {
    return new AngleNumber(factor.times(other), function, power, turn);
  }

  /** Whether it differs from another in the angle only. */
  boolean isLike(AngleNumber other) {
    return factor.equals(other.factor) && function.equals(other.function) && power == other.power;
  }
}
