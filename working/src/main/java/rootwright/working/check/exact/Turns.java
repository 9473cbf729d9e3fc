package rootwright.working.check.exact;

import java.math.BigInteger;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.problem.Angle;

/**
 * The functions of angles q·π by a primitive N-th root of unity ζ = cos(2π/N) + i·sin(2π/N), one
 * unknown of the evaluation: 2·cos(2πk/N) = ζ^k + ζ^(−k) (de Moivre).
 */
final class Turns {

  /** Above this the algebra of the roots of unity is not entered. */
  private static final BigInteger LARGEST_ORDER = BigInteger.valueOf(400);

  private final int order;
  private final int unknown;

  /**
   * @param order N, a multiple of 4
   * @param unknown the number of the unknown that stands for ζ
   */
  Turns(int order, int unknown) {
    this.order = order;
    this.unknown = unknown;
  }

  /**
   * The least multiple of 4 that serves every angle in these formulas; 1 if there is none.
   *
   * @throws Unevaluable if it would be too large
   */
  static int order(List<Formula> formulas) {
    BigInteger order = BigInteger.ONE;
    for (Formula formula : formulas) {
      order = common(order, formula);
      if (order.compareTo(LARGEST_ORDER) > 0) {
        throw Unevaluable.tooLarge("the angles need roots of unity of order " + order);
      }
    }
    return order.intValueExact();
  }

  private static BigInteger common(BigInteger order, Formula formula) {
    BigInteger found = order;
    if (formula instanceof Formula.Application application) {
      BigInteger own =
          Angle.argument(application)
              .map(q -> leastCommonMultiple(BigInteger.valueOf(4), Angle.order(q)))
              .orElse(BigInteger.ONE);
      found = leastCommonMultiple(found, own);
    }
    for (Formula part : formula.parts()) {
      found = common(found, part);
    }
    return found;
  }

  private static BigInteger leastCommonMultiple(BigInteger a, BigInteger b) {
    return a.multiply(b).divide(a.gcd(b));
  }

  /** The value of a function of the angle q·π. */
  RationalFunction of(String function, Rational q) {
    int k =
        q.over(Rational.of(2)).times(order).numerator().mod(BigInteger.valueOf(order)).intValue();
    return switch (function) {
      case "cos" -> cosine(k);
      case "sin" -> cosine(k - order / 4);
      case "tan" -> over(cosine(k - order / 4), cosine(k));
      case "cot" -> over(cosine(k), cosine(k - order / 4));
      case "sec" -> over(RationalFunction.ONE, cosine(k));
      default -> over(RationalFunction.ONE, cosine(k - order / 4));
    };
  }

  private static RationalFunction over(RationalFunction over, RationalFunction under) {
    return over.over(under);
  }

  /** cos(2πk/N). */
  private RationalFunction cosine(int k) {
    return RationalFunction.of(power(k).plus(power(-k)).times(Rational.of(2).reciprocal()));
  }

  /** i, the quarter turn. */
  MultivariatePolynomial quarter() {
    return power(order / 4);
  }

  /** ζ^k; half a turn is −1, so that cos + i·sin is a single term. */
  private MultivariatePolynomial power(int k) {
    int reduced = Math.floorMod(k, order);
    int half = order / 2;
    return reduced < half
        ? MultivariatePolynomial.term(Rational.ONE, Monomial.power(unknown, reduced))
        : MultivariatePolynomial.term(Rational.MINUS_ONE, Monomial.power(unknown, reduced - half));
  }
}
