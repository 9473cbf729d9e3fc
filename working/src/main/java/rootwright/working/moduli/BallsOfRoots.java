package rootwright.working.moduli;

import java.util.List;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.notation.Formula;

/**
 * The value of an expression in the roots on balls that hold them.
 *
 * @param roots their names
 * @param balls a ball for each
 * @param bits for divisions
 */
record BallsOfRoots(List<String> roots, List<ComplexBall> balls, int bits) {

  BallsOfRoots {
    roots = List.copyOf(roots);
    balls = List.copyOf(balls);
  }

  /**
   * The value.
   *
   * @throws IllegalArgumentException if it is no rational expression in the roots
   */
  ComplexBall of(Formula formula) {
    if (formula instanceof Formula.Name name && roots.contains(name.spelling())) {
      return balls.get(roots.indexOf(name.spelling()));
    } else if (formula instanceof Formula.Numeral numeral) {
      return ComplexBall.of(numeral.value(), bits);
    } else if (formula instanceof Formula.Sum sum) {
      return sum.terms().stream().map(this::of).reduce(ComplexBall.ZERO, ComplexBall::plus);
    } else if (formula instanceof Formula.Product product) {
      return product.factors().stream().map(this::of).reduce(ComplexBall.ONE, ComplexBall::times);
    } else if (formula instanceof Formula.Negative negative) {
      return of(negative.of()).negate();
    } else if (formula instanceof Formula.Quotient quotient) {
      return of(quotient.over()).over(of(quotient.under()), bits);
    } else if (formula instanceof Formula.Power power
        && power.exponent() instanceof Formula.Numeral exponent
        && exponent.value().isInteger()
        && exponent.value().signum() >= 0) {
      return of(power.base()).power(exponent.value().intValueExact());
    }
    throw new IllegalArgumentException("not a rational expression in the roots: " + formula);
  }
}
