package rootwright.working.moduli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.algebra.value.RationalValue;
import rootwright.algebra.value.SurdSum;
import rootwright.working.answer.Answer;
import rootwright.working.check.exact.Valuation;
import rootwright.working.problem.Problem;
import rootwright.working.solve.Solution;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/**
 * One absolute value |E|: where E² is a number c, whatever the roots are called, |E| is √|c|. For
 * two conjugate roots |E|² is E times the same with the roots exchanged.
 */
final class OneModulus {

  private final Problem problem;
  private final ModulusAsk.Single ask;

  OneModulus(Problem problem, ModulusAsk.Single ask) {
    this.problem = problem;
    this.ask = ask;
  }

  Found find() {
    Formula inside = ask.inside();
    Formula square = NormalForm.of(inside.power(2));
    Valuation squared = Valuation.of(square, problem.setting());
    List<Step> steps = new ArrayList<>();
    Rational modulusSquared;
    if (squared instanceof Valuation.Determined determined) {
      Rational c = determined.value();
      viaSums(steps, inside);
      steps.add(
          Step.equation(
              problem.setting(),
              Idea.BUILD,
              "the square is symmetric, so the coefficients give it",
              square,
              Formula.number(c)));
      modulusSquared = c.absolute();
      if (c.signum() < 0) {
        steps.add(
            Step.argument(
                Idea.CONJUGATE,
                "a square that is negative is that of an imaginary number",
                Formula.equation(bars(inside).power(2), Formula.number(modulusSquared))));
      }
    } else if (problem.degree() == 2 && !isReal()) {
      Formula other = exchanged(inside);
      Formula product = NormalForm.of(inside.times(other));
      Valuation norm = Valuation.of(product, problem.setting());
      if (!(norm instanceof Valuation.Determined determined)) {
        return Found.none("the expression cannot be worked out");
      }
      modulusSquared = determined.value();
      steps.add(
          new Step(
              new Formula.Words("no root is real, so the roots are conjugates"),
              "the discriminant is negative",
              Idea.CONJUGATE,
              new Claim.CountOfRoots(problem.polynomial(), NumberDomain.REAL, 0)));
      steps.add(
          new Step(
              Formula.equation(bars(inside).power(2), product, Formula.number(modulusSquared)),
              "a number times its conjugate is the square of its modulus",
              Idea.CONJUGATE,
              Claim.equal(problem.setting(), product, Formula.number(modulusSquared))));
    } else {
      return Found.none(
          "the absolute value depends on which root has which name; ask for a sum over all of them, or for the square of a difference");
    }
    Rational raised = modulusSquared.power(ask.power());
    SurdSum value = ModulusValue.squareRoot(raised);
    ExactValue exact = scaled(ModulusValue.of(value, root(raised)), ask.factor());
    steps.add(end(exact, raised));
    List<Solution.WrongTurning> slips = new ArrayList<>();
    slips.add(
        slip(
            "square-root-forgotten",
            "What was found is the square; the absolute value is its root.",
            Answer.exact(modulusSquared.times(ask.factor())),
            Idea.BUILD));
    valueOf(inside)
        .ifPresent(
            plain ->
                slips.add(
                    slip(
                        "bars-forgotten",
                        "An absolute value is not negative.",
                        Answer.exact(plain.times(ask.factor())),
                        Idea.BUILD)));
    return new Found(
        Optional.of(exact),
        "",
        List.of(
            new Found.Way(
                "square",
                "square the absolute value",
                "The square of a difference is symmetric although the difference is not.",
                steps)),
        slips);
  }

  /** (r − s)² = (r + s)² − 4rs, shown before its value. */
  private void viaSums(List<Step> steps, Formula inside) {
    if (problem.degree() != 2) {
      return;
    }
    Formula r = Formula.name(problem.roots().get(0));
    Formula s = Formula.name(problem.roots().get(1));
    if (inside.equals(r.minus(s)) || inside.equals(s.minus(r))) {
      Rational sum = problem.polynomial().coefficient(1).over(problem.polynomial().lead()).negate();
      Rational product = problem.polynomial().coefficient(0).over(problem.polynomial().lead());
      steps.add(
          Step.equation(
              problem.setting(),
              Idea.READ_COEFFICIENTS,
              "the sum",
              r.plus(s),
              Formula.number(sum)));
      steps.add(
          Step.equation(
              problem.setting(),
              Idea.READ_COEFFICIENTS,
              "the product",
              r.times(s),
              Formula.number(product)));
      steps.add(
          Step.equation(
              problem.setting(),
              Idea.BUILD,
              "an identity",
              inside.power(2),
              r.plus(s).power(2).minus(Formula.number(4).times(r).times(s))));
    }
  }

  private Step end(ExactValue exact, Rational raised) {
    Formula written = problem.ask();
    Formula root = new Formula.Radical(Formula.number(raised), 2);
    Formula before = ask.factor().isOne() ? root : Formula.number(ask.factor()).times(root);
    Formula value = exact.toFormula();
    if (raised.isZero() || ask.power() % 2 == 0 || exact instanceof RationalValue) {
      return Step.argument(
          Idea.DOMAIN, "an absolute value is not negative", Formula.equation(written, value));
    }
    return new Step(
        before.equals(value)
            ? Formula.equation(written, value)
            : Formula.equation(written, before, value),
        "an absolute value is not negative",
        Idea.DOMAIN,
        Claim.equal(Setting.ofLetters(List.of()), before, value));
  }

  private Optional<Rational> valueOf(Formula inside) {
    return Valuation.of(inside, problem.setting()) instanceof Valuation.Determined determined
        ? Optional.of(determined.value())
        : Optional.empty();
  }

  private boolean isReal() {
    return ExactValues.rootsOf(problem.polynomial()).stream()
        .allMatch(root -> root.value().isReal());
  }

  private Formula exchanged(Formula inside) {
    Formula r = Formula.name(problem.roots().get(0));
    Formula s = Formula.name(problem.roots().get(1));
    return inside.rewrite(part -> part.equals(r) ? s : part.equals(s) ? r : part);
  }

  private static Formula bars(Formula inside) {
    return new Formula.Application("abs", List.of(inside));
  }

  private static RealBall root(Rational square) {
    return square.isZero() ? RealBall.exact(0) : RealBall.of(square, 400).squareRoot(400);
  }

  private static ExactValue scaled(ExactValue value, Rational factor) {
    if (value instanceof RationalValue number) {
      return new RationalValue(number.number().times(factor));
    }
    return ((QuadraticSurd) value).times(factor);
  }

  /** |E| on the enclosures, for some naming of the roots. */
  static RealBall enclosed(Problem problem, ModulusAsk.Single ask, int digits, int bits) {
    List<ComplexBall> balls = new ArrayList<>();
    for (ExactRoot root : ExactValues.rootsOf(problem.polynomial())) {
      for (int k = 0; k < root.multiplicity(); k++) {
        balls.add(root.value().enclosure(digits));
      }
    }
    ComplexBall value = new BallsOfRoots(problem.roots(), balls, bits).of(ask.inside());
    return value.absolute(bits).power(ask.power()).times(RealBall.of(ask.factor(), bits));
  }

  static Solution.WrongTurning slip(String name, String text, Answer value, Idea spot) {
    return new Solution.WrongTurning(name, text, value, spot, 25);
  }
}
