package rootwright.working.check.exact;

import java.util.Map;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.step.Setting;

/**
 * The formal value of a formula: powers are multiplied out as they stand and never reduced by the
 * polynomial. How many images an expression has under renaming the roots is a question of its form:
 * r¹⁰·s has n(n − 1) of them, also where r¹⁰ = 1.
 */
class FormalEvaluation extends ExactEvaluation {

  /** Highest power of a single term. */
  private static final int HIGHEST_MONOMIAL_POWER = 1_000_000;

  /** Highest power of a sum. */
  private static final int HIGHEST_POWER = 200;

  /** Longest sum that multiplying out a power may give. */
  private static final int MOST_TERMS = 3_000;

  FormalEvaluation(Setting setting, Unknowns unknowns, Map<String, Rational> letters) {
    super(setting, unknowns, letters);
  }

  /** Multiplied out as it stands: reducing a power would use more of the polynomial. */
  @Override
  public RationalFunction power(Formula.Power power) {
    Rational exponent = number(power.exponent());
    RationalFunction base = of(power.base());
    if (exponent.signum() < 0 && base.numerator().isZero()) {
      throw Unevaluable.zeroDenominator("zero has no negative power");
    }
    int terms = Math.max(base.numerator().terms().size(), base.denominator().terms().size());
    int highest = terms == 1 ? HIGHEST_MONOMIAL_POWER : HIGHEST_POWER;
    if (!exponent.isInteger()
        || exponent.absolute().compareTo(Rational.of(highest)) > 0
        || PowersOfRoots.termsOfPower(terms, exponent.absolute().intValueExact()) > MOST_TERMS) {
      throw Unevaluable.tooLarge("too long to write out");
    }
    return base.power(exponent.intValueExact());
  }
}
