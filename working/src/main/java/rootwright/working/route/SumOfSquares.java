package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/** A negative sum of squares shows that not all roots are real. */
final class SumOfSquares implements Route {

  @Override
  public String name() {
    return "sum-of-squares";
  }

  @Override
  public String title() {
    return "the sum of the squares is negative";
  }

  @Override
  public String teaches() {
    return "Squares of real numbers never add up to less than nothing.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    if (asked.problem().degree() < 2) {
      return new Attempt.Declined("there is one root only");
    }
    Lines lines = new Lines(asked.problem().setting());
    CoefficientLines coefficients = CoefficientLines.of(asked.problem());
    coefficients.write(lines, new TreeSet<>(List.of(1, 2)));
    Rational one = coefficients.values().get(1);
    Rational two = coefficients.values().get(2);
    Rational squares = one.times(one).minus(two.times(2));
    if (squares.signum() >= 0) {
      return new Attempt.Declined("the sum of the squares is not negative, which proves nothing");
    }
    lines.add(
        Idea.EXPAND,
        "the square of the sum less twice the products",
        new Formula.Aggregate(
            Formula.Aggregate.Operation.SUM, Formula.name(asked.problem().roots().get(0)).power(2)),
        NamedForm.elementary(1).power(2).minus(Formula.number(2).times(NamedForm.elementary(2))),
        Formula.number(squares));
    List<Step> steps = new ArrayList<>(lines.steps());
    steps.add(
        Step.argument(
            Idea.INEQUALITY,
            "real numbers have squares that are not negative",
            new Formula.Relation(
                List.of(Formula.number(squares), Formula.number(0)),
                List.of(Formula.Comparison.LESS))));
    return new Attempt.Worked(title(), steps, new Answer.Truth(false), List.of());
  }
}
