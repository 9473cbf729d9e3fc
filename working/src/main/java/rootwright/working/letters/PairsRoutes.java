package rootwright.working.letters;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.roots.PowerSum;
import rootwright.algebra.roots.PowerSums;
import rootwright.algebra.roots.Resultant;
import rootwright.working.route.Attempt;
import rootwright.working.route.RouteOn;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** The routes to sums and products over pairs of roots of two polynomials. */
final class PairsRoutes {

  static final List<RouteOn<PairsAsked>> ALL = List.of(new ProductByValue(), new SumByPowerSums());

  private PairsRoutes() {}

  /** The body as a polynomial in r (unknown 0) and s (unknown 1). */
  static Optional<MultivariatePolynomial> body(PairsAsked asked) {
    try {
      RationalFunction body =
          FormulaExpansion.expand(
              asked.aggregate().body(), Map.of(asked.firstName(), 0, asked.secondName(), 1));
      return body.isPolynomial() ? Optional.of(body.numerator()) : Optional.empty();
    } catch (UnreadableException other) {
      return Optional.empty();
    }
  }

  /** ∏(c(r) − c·s) by B at a point that depends on r. */
  private static final class ProductByValue implements RouteOn<PairsAsked> {
    @Override
    public String name() {
      return "values-at-roots";
    }

    @Override
    public String title() {
      return "multiply over s first: each r gives a value of the second polynomial";
    }

    @Override
    public String teaches() {
      return "B(c) is b·∏(c − s), so a double product is a product of values of B.";
    }

    @Override
    public Attempt attempt(PairsAsked asked) {
      Optional<MultivariatePolynomial> body = body(asked);
      if (asked.aggregate().operation() != Formula.Aggregate.Operation.PRODUCT
          || body.isEmpty()
          || body.get().degreeIn(1) != 1) {
        return new Attempt.Declined(
            "the ask is no product of factors that are linear in the second root");
      }
      List<MultivariatePolynomial> parts = body.get().coefficientsIn(1);
      if (!parts.get(1).isConstant()) {
        return new Attempt.Declined("the second root is multiplied by the first");
      }
      // factor = c·s + q(r) = −c·(p(r) − s) with p = −q/c
      Rational c = parts.get(1).coefficient(Monomial.ONE);
      Polynomial q = polynomial(parts.get(0));
      Polynomial p = q.times(c.reciprocal()).negate();
      Polynomial b = asked.second();
      int n = asked.first().degree();
      int m = b.degree();
      Rational scale = c.negate().power(n * m).over(b.lead().power(n));
      Formula point = PolynomialFormula.of(p, asked.firstName());
      Formula values =
          new Formula.Aggregate(
              Formula.Aggregate.Operation.PRODUCT, new Formula.Application("B", List.of(point)));
      Formula side = scale.isOne() ? values : Formula.number(scale).times(values);
      if (scale.equals(Rational.MINUS_ONE)) {
        side = new Formula.Negative(values);
      }
      LetterLines lines = new LetterLines();
      line(lines, asked, Idea.EVALUATE, "multiply over all " + asked.secondName(), side);
      Polynomial composed = b.compose(p);
      Polynomial reduced = composed.remainder(asked.first());
      Formula written = PolynomialFormula.of(reduced, asked.firstName());
      lines.add(
          asked.setting(),
          Idea.REDUCE,
          "by the first equation",
          new Formula.Application("B", List.of(point)),
          written);
      Formula product =
          reduced.degree() < 1
              ? Formula.number(reduced.coefficient(0)).power(n)
              : new Formula.Aggregate(Formula.Aggregate.Operation.PRODUCT, written);
      Rational value =
          reduced.degree() < 1
              ? reduced.coefficient(0).power(n)
              : Resultant.of(asked.first(), reduced)
                  .over(asked.first().lead().power(reduced.degree()));
      lines.add(
          asked.setting(),
          Idea.EVALUATE,
          reduced.degree() == 1
              ? "a value of the first polynomial"
              : "over all " + asked.firstName(),
          values,
          product,
          Formula.number(value));
      line(lines, asked, Idea.ARITHMETIC, "so", Formula.number(asked.value()));
      return Attempt.Worked.of(title(), lines.steps(), asked.value());
    }

    private static Polynomial polynomial(MultivariatePolynomial inFirst) {
      List<Rational> ascending = new ArrayList<>();
      for (int k = 0; k <= inFirst.degreeIn(0); k++) {
        ascending.add(inFirst.coefficient(Monomial.power(0, k)));
      }
      return Polynomial.ofAscending(ascending);
    }
  }

  /** Σ c·r^i·s^j is Σ c·S_i(A)·S_j(B). */
  private static final class SumByPowerSums implements RouteOn<PairsAsked> {
    @Override
    public String name() {
      return "separate-sums";
    }

    @Override
    public String title() {
      return "multiply out and sum over each polynomial by itself";
    }

    @Override
    public String teaches() {
      return "Over all pairs a product of two power sums appears; a term with one root is met as often as there are others.";
    }

    @Override
    public Attempt attempt(PairsAsked asked) {
      Optional<MultivariatePolynomial> body = body(asked);
      if (asked.aggregate().operation() != Formula.Aggregate.Operation.SUM || body.isEmpty()) {
        return new Attempt.Declined("the ask is no sum of a polynomial over all pairs");
      }
      LetterLines lines = new LetterLines();
      List<Formula> terms = new ArrayList<>();
      Setting first = Setting.of(asked.first(), List.of(asked.firstName()));
      Setting second = Setting.of(asked.second(), List.of(asked.secondName()));
      for (Map.Entry<Monomial, Rational> term : body.get().terms().descendingMap().entrySet()) {
        int i = term.getKey().exponent(0);
        int j = term.getKey().exponent(1);
        Optional<Rational> left = sum(lines, first, asked.first(), asked.firstName(), i);
        Optional<Rational> right = sum(lines, second, asked.second(), asked.secondName(), j);
        if (left.isEmpty() || right.isEmpty()) {
          return new Attempt.Declined("a power sum has too many digits");
        }
        List<Formula> factors = new ArrayList<>();
        if (!term.getValue().isOne()) {
          factors.add(Formula.number(term.getValue()));
        }
        factors.add(Formula.number(left.get()));
        factors.add(Formula.number(right.get()));
        terms.add(Formula.product(factors));
      }
      line(lines, asked, Idea.SUM_OVER_ROOTS, "every term over all pairs", Formula.sum(terms));
      line(lines, asked, Idea.ARITHMETIC, "add up", Formula.number(asked.value()));
      return Attempt.Worked.of(title(), lines.steps(), asked.value());
    }

    private static Optional<Rational> sum(
        LetterLines lines, Setting setting, Polynomial polynomial, String name, int k) {
      if (k == 0) {
        return Optional.of(Rational.of(polynomial.degree()));
      }
      PowerSum sum = PowerSums.of(polynomial).exact(BigInteger.valueOf(k));
      if (!(sum instanceof PowerSum.Exact exact)) {
        return Optional.empty();
      }
      Formula root = Formula.name(name);
      lines.add(
          setting,
          k == 1 ? Idea.READ_COEFFICIENTS : Idea.NEWTON,
          k == 1 ? "read off" : "the sum of the powers over the roots of one polynomial",
          new Formula.Aggregate(Formula.Aggregate.Operation.SUM, k == 1 ? root : root.power(k)),
          Formula.number(exact.value()));
      return Optional.of(exact.value());
    }
  }

  private static void line(
      LetterLines lines, PairsAsked asked, Idea idea, String reason, Formula side) {
    Formula normal = NormalForm.of(side);
    lines.write(
        new Step(Formula.equation(asked.aggregate(), normal), reason, idea, asked.claim(normal)));
  }
}
