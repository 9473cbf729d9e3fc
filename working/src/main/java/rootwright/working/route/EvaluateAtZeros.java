package rootwright.working.route;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/**
 * The product of a quadratic factor over the roots, by its own zeros u and v: every factor is c(r −
 * u)(r − v), so all of them together are P(u)·P(v), and P is short at u and v because u² and v² are
 * linear there.
 */
final class EvaluateAtZeros implements Route {

  @Override
  public String name() {
    return "evaluate-zeros";
  }

  @Override
  public String title() {
    return "put the zeros of the factor into P";
  }

  @Override
  public String teaches() {
    return "A product over the roots of P is a product over the zeros of the factor.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    if (asked.productOverRoots().isEmpty()) {
      return new Attempt.Declined("the ask is no product of one factor for each root");
    }
    RootFunction f = asked.productOverRoots().get();
    if (!f.isPolynomial() || f.numerator().degree() != 2) {
      return new Attempt.Declined("the factor is no quadratic expression in the root");
    } else if (asked.problem().degree() < 2) {
      return new Attempt.Declined("there is one root only");
    }
    return worked(asked.problem(), f.numerator());
  }

  private Attempt worked(Problem problem, Polynomial factor) {
    Polynomial p = problem.polynomial();
    List<String> names = FreshNames.indexed(FreshNames.letter(problem), 2);
    Formula u = Formula.name(names.get(0));
    Formula v = Formula.name(names.get(1));
    Setting zeros = Setting.of(factor, names).withFunction("P", p);
    Rational c = factor.lead();
    Rational sum = factor.coefficient(1).over(c).negate();
    Rational product = factor.coefficient(0).over(c);
    Polynomial rest = p.remainder(factor);
    Rational slope = rest.coefficient(1);
    Rational constant = rest.coefficient(0);
    Rational both =
        slope
            .times(slope)
            .times(product)
            .plus(slope.times(constant).times(sum))
            .plus(constant.times(constant));
    Lines lines = new Lines(zeros);
    lines.add(
        Idea.REDUCE,
        "%s is zero at %s: divide P by it"
            .formatted(
                UnicodeWriter.write(PolynomialFormula.of(factor, problem.unknown())),
                UnicodeWriter.write(u)),
        applied(u),
        PolynomialFormula.of(rest, names.get(0)));
    lines.add(Idea.READ_COEFFICIENTS, "the two zeros, read off", u.plus(v), Formula.number(sum));
    lines.add(
        Idea.READ_COEFFICIENTS, "the two zeros, read off", u.times(v), Formula.number(product));
    lines.add(
        Idea.EXPAND,
        "multiply out",
        applied(u).times(applied(v)),
        new Combination()
            .plus(slope.times(slope), u.times(v))
            .plus(slope.times(constant), u.plus(v))
            .plus(constant.times(constant))
            .formula(),
        Formula.number(both));
    factors(lines, problem, factor, names);
    Rational value = c.power(problem.degree()).times(both).over(p.lead().power(2));
    Formula scaled =
        new Combination().plus(c.power(problem.degree()), Formula.number(both)).formula();
    lines
        .in(problem.setting())
        .add(
            Idea.EVALUATE,
            "put in",
            problem.ask(),
            p.lead().isOne() ? scaled : scaled.over(Formula.number(p.lead()).power(2)),
            Formula.number(value));
    return Attempt.Worked.of(title(), lines.steps(), value);
  }

  private static Formula applied(Formula point) {
    return new Formula.Application("P", List.of(point));
  }

  /** P in linear factors, which exchanges the two products. */
  private static void factors(Lines lines, Problem problem, Polynomial factor, List<String> names) {
    Formula root = Formula.name(problem.roots().get(0));
    Formula x = Formula.name(problem.unknown());
    Formula each =
        new Combination()
            .plus(
                factor.lead(),
                Formula.name(names.get(0))
                    .minus(root)
                    .times(Formula.name(names.get(1)).minus(root)))
            .formula();
    lines
        .in(problem.setting().withFree(problem.unknown()))
        .add(
            Idea.EVALUATE,
            "%s is %s, and for all roots together that is P at both zeros"
                .formatted(
                    UnicodeWriter.write(PolynomialFormula.of(factor, problem.roots().get(0))),
                    UnicodeWriter.write(each)),
            applied(x),
            new Combination()
                .plus(
                    problem.polynomial().lead(),
                    new Formula.Aggregate(Formula.Aggregate.Operation.PRODUCT, x.minus(root)))
                .formula());
  }
}
