package rootwright.working.check.exact;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.roots.Resultant;
import rootwright.working.check.Verdict;
import rootwright.working.step.Claim;
import rootwright.working.step.Setting;

/**
 * Sums and products over all roots r of A and s of B. A product is a resultant of resultants; a sum
 * Σ N/D is the coefficient of T in ∏(D + T·N), over ∏ D.
 */
public final class PairsByResultants {

  private PairsByResultants() {}

  static Verdict of(Claim.EqualOverPairs claim) {
    Rational found =
        value(claim.first().polynomial(), claim.second(), claim.names(), claim.aggregate());
    Unknowns unknowns = new Unknowns(claim.first().polynomial().degree());
    Rational claimed = new ExactEvaluation(claim.first(), unknowns, Map.of()).number(claim.value());
    return found.equals(claimed)
        ? Verdict.confirmed("resultants")
        : new Verdict.Refuted("the value over all pairs is " + found);
  }

  /**
   * The value over all pairs of roots.
   *
   * @throws Unevaluable if a denominator is zero for some pair, or other names occur
   */
  public static Rational value(
      Polynomial a, Polynomial b, List<String> names, Formula.Aggregate aggregate) {
    Setting shape = new Setting(Polynomial.X.power(2), names, Map.of(), Map.of(), List.of());
    RationalFunction body =
        new FormalEvaluation(shape, new Unknowns(2), Map.of()).of(aggregate.body()).lowestTerms();
    if (body.unknowns() > 2) {
      throw Unevaluable.form("square roots over pairs of roots are not supported");
    }
    Rational under = product(a, b, body.denominator());
    if (under.isZero()) {
      throw Unevaluable.zeroDenominator("a pair of roots makes a denominator zero");
    }
    if (aggregate.operation() == Formula.Aggregate.Operation.PRODUCT) {
      return product(a, b, body.numerator()).over(under);
    }
    // G(T) = ∏(D + T·N) has degree nm in T; its derivative at 0 from as many values.
    int degree = a.degree() * b.degree();
    Polynomial sum = Polynomial.ZERO;
    Polynomial vanishing = Polynomial.ONE;
    for (int point = 0; point <= degree; point++) {
      Rational t = Rational.of(point);
      Rational value = product(a, b, body.denominator().plus(body.numerator().times(t)));
      sum = sum.plus(vanishing.times(value.minus(sum.at(t)).over(vanishing.at(t))));
      vanishing = vanishing.times(Polynomial.withRoots(List.of(t)));
    }
    return sum.coefficient(1).over(under);
  }

  /** ∏ f(r, s): with g(r) = ∏ f(r, s) over s, a polynomial in r, the product of g over r. */
  private static Rational product(Polynomial a, Polynomial b, MultivariatePolynomial f) {
    int degree = b.degree() * f.degreeIn(0);
    Polynomial g = Polynomial.ZERO;
    Polynomial vanishing = Polynomial.ONE;
    for (int point = 0; point <= degree; point++) {
      Rational r = Rational.of(point);
      Rational value = overRoots(b, inSecond(f, r));
      g = g.plus(vanishing.times(value.minus(g.at(r)).over(vanishing.at(r))));
      vanishing = vanishing.times(Polynomial.withRoots(List.of(r)));
    }
    return overRoots(a, g);
  }

  /** ∏ g(x) over the roots x of p: the resultant without its power of the lead of p. */
  private static Rational overRoots(Polynomial p, Polynomial g) {
    if (g.isZero()) {
      return Rational.ZERO;
    } else if (g.degree() == 0) {
      return g.coefficient(0).power(p.degree());
    }
    return Resultant.of(p, g).over(p.lead().power(g.degree()));
  }

  private static Polynomial inSecond(MultivariatePolynomial f, Rational r) {
    Rational[] ascending = new Rational[f.degreeIn(1) + 1];
    Arrays.fill(ascending, Rational.ZERO);
    for (Map.Entry<Monomial, Rational> term : f.terms().entrySet()) {
      int power = term.getKey().exponent(1);
      ascending[power] =
          ascending[power].plus(term.getValue().times(r.power(term.getKey().exponent(0))));
    }
    return Polynomial.ofAscending(List.of(ascending));
  }
}
