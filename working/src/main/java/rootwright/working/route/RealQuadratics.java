package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.factor.Factorisation;
import rootwright.algebra.factor.IrreducibleFactor;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.ask.RealRootSum;
import rootwright.working.problem.Problem;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/** The sum of the real roots where P is a product of linear and quadratic factors. */
final class RealQuadratics implements Route {

  @Override
  public String name() {
    return "real-quadratics";
  }

  @Override
  public String title() {
    return "factor, and keep the factors with real roots";
  }

  @Override
  public String teaches() {
    return "Each quadratic factor gives two real roots or none, and their sum at once.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Problem problem = asked.problem();
    Optional<RootFunction> f = RealRootSum.of(problem);
    List<IrreducibleFactor> factors = Factorisation.of(problem.polynomial()).factors();
    if (!f.map(RootFunction.of(Polynomial.X)::equals).orElse(false)) {
      return new Attempt.Declined("it is made for the sum of the roots themselves");
    } else if (factors.stream().anyMatch(factor -> factor.polynomial().degree() > 2)) {
      return new Attempt.Declined("P has a factor of degree 3 or more over the rational numbers");
    } else if (factors.size() == 1 && problem.degree() > 2) {
      return new Attempt.Declined("P is a power of one factor");
    }
    Lines lines = new Lines(problem.setting());
    List<Polynomial> all = new ArrayList<>();
    factors.forEach(
        factor -> {
          for (int k = 0; k < factor.multiplicity(); k++) {
            all.add(factor.polynomial());
          }
        });
    RootsFound.product(
        lines, problem, "factor P", Factorisation.of(problem.polynomial()).content(), all);
    List<Step> steps = new ArrayList<>(lines.steps());
    Combination terms = new Combination();
    Rational sum = Rational.ZERO;
    for (IrreducibleFactor factor : factors) {
      Polynomial p = factor.polynomial();
      boolean real = p.degree() == 1 || quadratic(problem, p, steps);
      if (real) {
        Rational part = p.coefficient(p.degree() - 1).over(p.lead()).negate();
        terms.plus(Rational.of(factor.multiplicity()), Formula.number(part));
        sum = sum.plus(part.times(Rational.of(factor.multiplicity())));
      }
    }
    steps.add(
        terms.formula() instanceof Formula.Sum several
            ? Step.equation(
                problem.setting(),
                Idea.SUM_OVER_ROOTS,
                "the sums of the real factors",
                several,
                Formula.number(sum))
            : Step.argument(
                Idea.SUM_OVER_ROOTS,
                terms.isEmpty() ? "no root is real" : "the sum of the one real factor",
                Formula.equation(asked.formula(), Formula.number(sum))));
    return new Attempt.Worked(title(), steps, Answer.exact(sum), List.of());
  }

  private static boolean quadratic(Problem problem, Polynomial p, List<Step> steps) {
    Rational a = p.coefficient(2);
    Rational b = p.coefficient(1);
    Rational c = p.coefficient(0);
    Rational square = b.times(b).minus(a.times(c).times(4));
    boolean real = square.signum() >= 0;
    Lines lines = new Lines(problem.setting());
    lines.add(
        Idea.DISCRIMINANT,
        "the discriminant of %s: %s"
            .formatted(
                UnicodeWriter.write(PolynomialFormula.of(p, problem.unknown())),
                real ? "two real roots" : "no real root"),
        Formula.number(b)
            .power(2)
            .minus(
                Combination.product(
                    List.of(Formula.number(4), Formula.number(a), Formula.number(c)))),
        Formula.number(square));
    steps.addAll(lines.steps());
    return real;
  }
}
