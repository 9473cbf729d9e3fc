package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.ask.RealRootSum;
import rootwright.working.problem.Problem;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/**
 * The sum of the real roots of a quartic whose coefficients read the same backwards: u = x + 1/x
 * takes two values, and a pair x, 1/x is real where u² ≥ 4.
 */
final class RealPairs implements Route {

  @Override
  public String name() {
    return "real-pairs";
  }

  @Override
  public String title() {
    return "u = x + 1/x, and only the pairs that are real";
  }

  @Override
  public String teaches() {
    return "x + 1/x = u has real solutions exactly if u is at least 2 or at most −2.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Problem problem = asked.problem();
    Optional<RootFunction> f = RealRootSum.of(problem);
    Optional<Pairing.Reciprocal> pairing =
        Pairing.of(problem.polynomial()).stream()
            .filter(Pairing.Reciprocal.class::isInstance)
            .map(Pairing.Reciprocal.class::cast)
            .findFirst();
    if (pairing.isEmpty() || problem.degree() != 4) {
      return new Attempt.Declined("this is no quartic whose coefficients read the same backwards");
    } else if (!f.map(RootFunction.of(Polynomial.X)::equals).orElse(false)) {
      return new Attempt.Declined("it is made for the sum of the roots themselves");
    }
    String u = FreshNames.letter(problem);
    Formula x = Formula.name(problem.unknown());
    Lines lines = new Lines(problem.setting().withFree(problem.unknown()));
    pairing.get().show(lines, x);
    Polynomial pairs = pairing.get().pairs();
    Problem inPairs =
        new Problem(pairs, Formula.name(u), u, List.of("r_1", "r_2"), Formula.name(u), List.of());
    List<ExactValue> values =
        QuadraticLines.write(
            lines.in(Setting.of(pairs, List.of())), inPairs.asking(Formula.name(u)), pairs);
    List<Step> steps = new ArrayList<>();
    steps.addAll(lines.steps());
    List<Formula> real = new ArrayList<>();
    for (ExactValue value : values) {
      steps.addAll(decide(problem, value, real));
    }
    return total(asked, steps, values, real, pairs);
  }

  /** Whether x² − u·x + 1 has real roots. */
  private static List<Step> decide(Problem problem, ExactValue u, List<Formula> real) {
    Lines lines = new Lines(problem.setting());
    ExactValue square = discriminant(u);
    lines.add(
        Idea.DISCRIMINANT,
        "the discriminant of x² − ux + 1",
        u.toFormula().power(2).minus(Formula.number(4)),
        square.toFormula());
    List<Step> steps = new ArrayList<>(lines.steps());
    boolean isReal = square.isReal() && sign(square) >= 0;
    if (isReal) {
      real.add(u.toFormula());
    }
    steps.add(
        Step.argument(
            Idea.DOMAIN,
            !square.isReal()
                ? "u is not real, so x is not"
                : isReal ? "not negative: this pair is real" : "negative: this pair is not real",
            new Formula.Words(
                isReal ? "this pair adds its u to the sum" : "this pair is left out")));
    return steps;
  }

  private Attempt total(
      Asked asked,
      List<Step> steps,
      List<ExactValue> values,
      List<Formula> real,
      Polynomial pairs) {
    boolean equal = values.size() == 1;
    ExactValue sum = new RationalValue(Rational.ZERO);
    if (real.size() == 2) {
      sum = new RationalValue(pairs.coefficient(1).over(pairs.lead()).negate());
    } else if (real.size() == 1) {
      ExactValue only =
          values.stream().filter(v -> v.toFormula().equals(real.get(0))).findFirst().orElseThrow();
      sum =
          equal && only instanceof RationalValue twice
              ? new RationalValue(twice.number().times(2))
              : only;
    }
    List<Formula> terms = new ArrayList<>(real);
    if (equal) {
      terms.addAll(real);
    }
    if (terms.size() == 2) {
      steps.add(
          Step.equation(
              asked.problem().setting(),
              Idea.SUM_OVER_ROOTS,
              "both pairs",
              Formula.sum(terms),
              sum.toFormula()));
    } else {
      steps.add(
          Step.argument(
              Idea.SUM_OVER_ROOTS,
              terms.isEmpty() ? "no pair is real" : "the one pair that is real",
              Formula.equation(asked.formula(), sum.toFormula())));
    }
    return new Attempt.Worked(title(), steps, new Answer.Exact(sum), List.of());
  }

  private static ExactValue discriminant(ExactValue u) {
    if (u instanceof RationalValue rational) {
      return new RationalValue(rational.number().times(rational.number()).minus(Rational.of(4)));
    }
    QuadraticSurd surd = (QuadraticSurd) u;
    ExactValue square = surd.times(surd);
    return square instanceof QuadraticSurd still
        ? still.plus(Rational.of(-4))
        : new RationalValue(((RationalValue) square).number().minus(Rational.of(4)));
  }

  private static int sign(ExactValue real) {
    return real instanceof RationalValue rational
        ? rational.number().signum()
        : ((QuadraticSurd) real).signum();
  }
}
