package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.factor.RationalRoot;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.algebra.symmetric.SymmetricPolynomial;
import rootwright.working.ask.Asked;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;

/**
 * Products over the roots by putting numbers into P: since P(x) = a·Π(x − r), the product of k − r
 * over all roots is P(k)/a.
 */
final class EvaluateAtPoint implements Route {

  @Override
  public String name() {
    return "evaluate";
  }

  @Override
  public String title() {
    return "put numbers into P";
  }

  @Override
  public String teaches() {
    return "P(k) is the lead times the product of all k − r.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Optional<RootFunction> product = asked.productOverRoots();
    if (product.isPresent()) {
      return overRoots(asked, product.get());
    }
    return isProductOfPairSums(asked)
        ? pairSums(asked)
        : new Attempt.Declined("the ask is no product of one factor for each root");
  }

  private static Attempt overRoots(Asked asked, RootFunction f) {
    if (!f.isPolynomial()) {
      return new Attempt.Declined("a root stands in a denominator");
    }
    Polynomial g = f.numerator();
    Optional<LinearFactors> linear = LinearFactors.of(g);
    if (linear.isPresent()) {
      return linear(asked, linear.get());
    }
    boolean evenQuadratic = g.degree() == 2 && g.coefficient(1).isZero();
    return evenQuadratic
        ? quadratic(asked, g)
        : new Attempt.Declined(
            "the factor does not split into linear factors with rational numbers");
  }

  private static Attempt linear(Asked asked, LinearFactors factors) {
    Polynomial p = asked.problem().polynomial();
    int n = p.degree();
    Lines lines = new Lines(asked.problem().setting());
    factorised(asked, lines);
    // Π g(r) = u^n·∏ ((−1)^n·P(c)/a)^m for g = u·∏ (x − c)^m; the signs are collected in front.
    Rational scale = factors.lead().power(n);
    boolean negative = scale.signum() < 0 ^ (n % 2 == 1 && factors.degree() % 2 == 1);
    List<Formula> parts = new ArrayList<>();
    List<Formula> numbers = new ArrayList<>();
    if (!scale.absolute().isOne()) {
      parts.add(Formula.number(scale.absolute()));
      numbers.add(Formula.number(scale.absolute()));
    }
    Rational product = negative ? scale.absolute().negate() : scale.absolute();
    for (RationalRoot point : factors.points()) {
      Rational value = PolynomialValues.write(lines, "P", p, point.value()).over(p.lead());
      for (int k = 0; k < point.multiplicity(); k++) {
        parts.add(overLead(PolynomialValues.applied("P", point.value()), p.lead()));
        numbers.add(Formula.number(value));
        product = product.times(value);
      }
    }
    lines.add(
        Idea.EVALUATE,
        negative
            ? "turning round an odd number of factors changes the sign"
            : "P(k) is the lead times the product of all k − r",
        asked.formula(),
        signed(negative, Formula.product(parts)),
        signed(negative, Formula.product(numbers)),
        Formula.number(product));
    return Attempt.Worked.of("put numbers into P", lines.steps(), product);
  }

  private static Formula signed(boolean negative, Formula formula) {
    return negative ? new Formula.Negative(formula) : formula;
  }

  /** Π(b·r² + c) by the even and the odd part of P at x² = −c/b. */
  private static Attempt quadratic(Asked asked, Polynomial g) {
    Polynomial p = asked.problem().polynomial();
    Rational square = g.coefficient(0).over(g.lead()).negate();
    Polynomial even = everySecond(p, 0);
    Polynomial odd = everySecond(p, 1);
    String x = asked.problem().unknown();
    Formula unknown = Formula.name(x);
    Lines lines =
        new Lines(
            asked.problem().setting().withFunction("E", even).withFunction("O", odd).withFree(x));
    lines.add(
        Idea.EVALUATE,
        "even and odd powers apart",
        apply("P", unknown),
        apply("E", unknown.power(2)).plus(unknown.times(apply("O", unknown.power(2)))));
    Lines numbers =
        lines.in(asked.problem().setting().withFunction("E", even).withFunction("O", odd));
    Rational e = PolynomialValues.write(numbers, "E", even, square);
    Rational o = PolynomialValues.write(numbers, "O", odd, square);
    Rational both = e.power(2).minus(square.times(o.power(2)));
    int n = p.degree();
    Rational scale = g.lead().power(n).over(p.lead().power(2));
    // Π(r − q)(r + q) = P(q)·P(−q)·(−1)^n·(−1)^n/a², and P(±q) = E ± q·O with q² = square.
    Rational result = scale.times(both);
    Formula worked =
        Formula.number(e)
            .power(2)
            .plus(
                square.signum() < 0
                    ? times(square.absolute(), Formula.number(o).power(2))
                    : new Formula.Negative(times(square, Formula.number(o).power(2))));
    numbers.add(
        Idea.EVALUATE,
        "the product of P at the two square roots of %s, over a²"
            .formatted(UnicodeWriter.write(Formula.number(square))),
        asked.formula(),
        scale.isOne() ? worked : Formula.number(scale).times(worked),
        Formula.number(result));
    return Attempt.Worked.of("put both square roots into P", lines.steps(), result);
  }

  private static Polynomial everySecond(Polynomial p, int first) {
    List<Rational> kept = new ArrayList<>();
    for (int k = first; k <= p.degree(); k += 2) {
      kept.add(p.coefficient(k));
    }
    return Polynomial.ofAscending(kept);
  }

  private static boolean isProductOfPairSums(Asked asked) {
    if (asked.problem().degree() != 3) {
      return false;
    }
    SymmetricPolynomial sum = SymmetricPolynomial.elementary(3, 1);
    SymmetricPolynomial all =
        sum.times(SymmetricPolynomial.elementary(3, 2)).minus(SymmetricPolynomial.elementary(3, 3));
    boolean written =
        asked.formula() instanceof Formula.Product || asked.formula() instanceof Formula.Aggregate;
    return written && asked.symmetric().filter(all::equals).isPresent();
  }

  /** (r + s)(s + t)(t + r): each factor is the sum of all roots less the third. */
  private static Attempt pairSums(Asked asked) {
    Polynomial p = asked.problem().polynomial();
    Rational sum = ElementaryValues.of(p).get(1);
    List<Formula> names = asked.problem().roots().stream().map(Formula::name).toList();
    Lines lines = new Lines(asked.problem().setting());
    lines.add(
        Idea.SUBSTITUTE,
        "the sum of all roots is " + UnicodeWriter.write(Formula.number(sum)),
        names.get(0).plus(names.get(1)),
        difference(sum, names.get(2)));
    factorised(asked, lines);
    Rational value = PolynomialValues.write(lines, "P", p, sum);
    Rational result = value.over(p.lead());
    lines.add(
        Idea.EVALUATE,
        "one factor for each root",
        asked.formula(),
        new Formula.Aggregate(Formula.Aggregate.Operation.PRODUCT, difference(sum, names.get(2))),
        overLead(PolynomialValues.applied("P", sum), p.lead()),
        Formula.number(result));
    return Attempt.Worked.of("put the sum of the roots into P", lines.steps(), result);
  }

  /** A product without a factor 1. */
  private static Formula times(Rational factor, Formula other) {
    return factor.isOne() ? other : Formula.number(factor).times(other);
  }

  private static Formula difference(Rational sum, Formula root) {
    return sum.isZero() ? new Formula.Negative(root) : Formula.number(sum).minus(root);
  }

  private static void factorised(Asked asked, Lines lines) {
    String x = asked.problem().unknown();
    Formula root = Formula.name(asked.problem().roots().get(0));
    Formula product =
        new Formula.Aggregate(Formula.Aggregate.Operation.PRODUCT, Formula.name(x).minus(root));
    Rational lead = asked.problem().polynomial().lead();
    lines
        .in(lines.setting().withFree(x))
        .add(
            Idea.EVALUATE,
            "P split into linear factors",
            apply("P", Formula.name(x)),
            lead.isOne() ? product : Formula.number(lead).times(product));
  }

  private static Formula apply(String function, Formula argument) {
    return new Formula.Application(function, List.of(argument));
  }

  private static Formula overLead(Formula value, Rational lead) {
    return lead.isOne() ? value : value.over(Formula.number(lead));
  }
}
