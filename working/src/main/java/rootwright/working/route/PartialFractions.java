package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.factor.RationalRoot;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.working.ask.Asked;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;

/**
 * Splits the term into partial fractions in r, each of which is a sum of 1/(k − r) over the roots.
 * The coefficients are found by cover-up (Heaviside): the cleared identity is one of polynomials,
 * so the excluded values may be put in.
 */
final class PartialFractions implements Route {

  @Override
  public String name() {
    return "partial-fractions";
  }

  @Override
  public String title() {
    return "split into partial fractions";
  }

  @Override
  public String teaches() {
    return "A fraction with several linear factors below is a sum of simple ones.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Optional<RootFunction> f = asked.sumOverRoots().filter(sum -> !sum.isPolynomial());
    if (f.isEmpty()) {
      return new Attempt.Declined("no fraction with a root below is added up over the roots");
    }
    if (f.get().denominator().degree() < 2) {
      return new Attempt.Declined("the fraction is simple already");
    }
    Optional<LinearFactors> factors =
        LinearFactors.of(f.get().denominator()).filter(LinearFactors::areDistinct);
    if (asked.problem().polynomial().gcd(f.get().denominator()).degree() > 0) {
      return Reasons.ZERO_DENOMINATOR;
    }
    return factors.isPresent()
        ? split(asked, f.get(), factors.get())
        : new Attempt.Declined(
            "the denominator has no different linear factors with rational numbers");
  }

  private static Attempt split(Asked asked, RootFunction f, LinearFactors factors) {
    Polynomial p = asked.problem().polynomial();
    Formula root = Formula.name(asked.problem().roots().get(0));
    Polynomial.Division division = f.numerator().divide(f.denominator());
    Polynomial slope = f.denominator().derivative();
    List<Formula> terms = new ArrayList<>();
    List<Rational> weights = new ArrayList<>();
    if (!division.quotient().isZero()) {
      terms.add(PolynomialFormula.of(division.quotient(), asked.problem().roots().get(0)));
    }
    for (RationalRoot point : factors.points()) {
      Rational weight = division.remainder().at(point.value()).over(slope.at(point.value()));
      weights.add(weight);
      if (!weight.isZero()) {
        Formula fraction =
            Formula.number(weight.absolute().numerator().longValueExact())
                .over(scaled(weight.denominator().longValueExact(), from(root, point.value())));
        terms.add(weight.signum() < 0 ? new Formula.Negative(fraction) : fraction);
      }
    }
    Lines lines = new Lines(asked.problem().setting());
    lines.add(
        Idea.PARTIAL_FRACTIONS,
        "cover up each factor in turn; cleared of fractions it is an identity of polynomials, so"
            + " the excluded values may be put in",
        term(f, asked),
        Formula.sum(terms));
    return finish(asked, lines, division.quotient(), factors, weights, p);
  }

  private static Attempt finish(
      Asked asked,
      Lines lines,
      Polynomial whole,
      LinearFactors factors,
      List<Rational> weights,
      Polynomial p) {
    Formula root = Formula.name(asked.problem().roots().get(0));
    Rational total = ResidueAlgebra.of(p).trace(whole);
    List<Formula> parts = new ArrayList<>();
    if (!whole.isZero()) {
      // A number under Σ would be read as a single term, so it is counted here.
      Formula sum =
          whole.degree() == 0
              ? Formula.number(p.degree()).times(Formula.number(whole.coefficient(0)))
              : new Formula.Aggregate(
                  Formula.Aggregate.Operation.SUM,
                  PolynomialFormula.of(whole, asked.problem().roots().get(0)));
      lines.add(
          Idea.SUM_OVER_ROOTS,
          whole.degree() == 0 ? "the whole part, once for every root" : "the whole part",
          sum,
          Formula.number(total));
      parts.add(Formula.number(total));
    }
    for (int j = 0; j < weights.size(); j++) {
      if (weights.get(j).isZero()) {
        continue;
      }
      Rational k = factors.points().get(j).value();
      Rational below = PolynomialValues.write(lines, "P", p, k);
      if (below.isZero()) {
        return new Attempt.Declined("a root makes a denominator zero");
      }
      Rational above = PolynomialValues.write(lines, "P'", p.derivative(), k);
      Rational value = above.over(below).negate();
      lines.add(
          Idea.LOG_DERIVATIVE,
          "minus P′ over P at " + UnicodeWriter.write(Formula.number(k)),
          new Formula.Aggregate(
              Formula.Aggregate.Operation.SUM, Formula.number(1).over(from(root, k))),
          new Formula.Negative(
              PolynomialValues.applied("P'", k).over(PolynomialValues.applied("P", k))),
          Formula.number(value));
      total = total.plus(weights.get(j).times(value));
      Formula product =
          weights.get(j).isOne()
              ? Formula.number(value)
              : Formula.number(weights.get(j)).times(Formula.number(value));
      parts.add(product);
    }
    lines.add(
        Idea.ARITHMETIC,
        "put together",
        asked.formula(),
        Formula.sum(parts),
        Formula.number(total));
    return Attempt.Worked.of("split into partial fractions", lines.steps(), total);
  }

  private static Formula term(RootFunction f, Asked asked) {
    String root = asked.problem().roots().get(0);
    return PolynomialFormula.of(f.numerator(), root)
        .over(PolynomialFormula.of(f.denominator(), root));
  }

  private static Formula from(Formula root, Rational k) {
    if (k.isZero()) {
      return root;
    }
    return k.signum() > 0 ? root.minus(Formula.number(k)) : root.plus(Formula.number(k.negate()));
  }

  private static Formula scaled(long factor, Formula formula) {
    return factor == 1 ? formula : Formula.number(factor).times(formula);
  }
}
