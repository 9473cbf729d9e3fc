package rootwright.working.route;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.ask.DiscriminantMeaning;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/** Counts the real roots of a quadratic or a cubic by the sign of its discriminant. */
final class DiscriminantSign implements Route {

  @Override
  public String name() {
    return "discriminant-sign";
  }

  @Override
  public String title() {
    return "the sign of the discriminant";
  }

  @Override
  public String teaches() {
    return "A pair of roots that are not real makes the discriminant negative.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Problem problem = asked.problem();
    if (!DiscriminantLines.isKnown(problem)) {
      return new Attempt.Declined("the sign of the discriminant decides for degree 2 and 3 only");
    }
    Lines lines = new Lines(problem.setting());
    Rational value = DiscriminantLines.write(lines, problem);
    boolean cubic = problem.degree() == 3;
    boolean allEqual = value.isZero() && (!cubic || squares(lines, problem).isZero());
    List<Step> steps = new ArrayList<>(lines.steps());
    int count =
        value.isZero() ? (allEqual ? 1 : 2) : value.signum() > 0 ? problem.degree() : cubic ? 1 : 0;
    Formula.Comparison sign =
        value.isZero()
            ? Formula.Comparison.EQUAL
            : value.signum() > 0 ? Formula.Comparison.GREATER : Formula.Comparison.LESS;
    steps.add(
        Step.argument(
            Idea.DISCRIMINANT,
            reason(value, allEqual, cubic),
            new Formula.Relation(
                List.of(DiscriminantMeaning.of(problem), Formula.number(0)), List.of(sign))));
    return new Attempt.Worked(
        title(), steps, new Answer.Count(BigInteger.valueOf(count)), List.of());
  }

  /** Σ (r − s)², which is zero only if all (real) roots are equal. */
  private static Rational squares(Lines lines, Problem problem) {
    CoefficientLines coefficients = CoefficientLines.of(problem);
    coefficients.write(lines, new TreeSet<>(List.of(1, 2)));
    Rational one = coefficients.values().get(1);
    Rational two = coefficients.values().get(2);
    Rational value = one.times(one).times(2).minus(two.times(6));
    Formula difference =
        Formula.name(problem.roots().get(0)).minus(Formula.name(problem.roots().get(1)));
    lines.add(
        Idea.EXPAND,
        "are all three equal?",
        new Formula.Aggregate(Formula.Aggregate.Operation.SUM, difference.power(2)),
        Formula.number(2)
            .times(NamedForm.elementary(1).power(2))
            .minus(Formula.number(6).times(NamedForm.elementary(2))),
        Formula.number(value));
    return value;
  }

  private static String reason(Rational value, boolean allEqual, boolean cubic) {
    if (value.isZero()) {
      return allEqual
          ? "all roots are equal, so there is one real root"
          : "two roots are equal and one is not; a root that is not real would bring its conjugate";
    } else if (value.signum() > 0) {
      return cubic ? "positive: three different real roots" : "positive: two different real roots";
    }
    return cubic
        ? "negative: the square of a difference is negative, so one root is real and two are conjugates"
        : "negative: no real root";
  }
}
