package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/**
 * If all roots are real, then k(n−k)·e_k² ≥ (k+1)(n−k+1)·e_(k−1)·e_(k+1) (Newton 1707, Arithmetica
 * universalis; proved by Rolle's theorem and reversal in Hardy, Littlewood and Pólya 1934,
 * Inequalities, theorem 51). One that fails shows that not all roots are real.
 */
final class NewtonInequality implements Route {

  @Override
  public String name() {
    return "newton-inequality";
  }

  @Override
  public String title() {
    return "one of Newton's inequalities fails";
  }

  @Override
  public String teaches() {
    return "Real roots force the coefficients to be log-concave; the converse is false.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    int n = asked.problem().degree();
    List<Rational> e = ElementaryValues.of(asked.problem().polynomial());
    for (int k = 1; k < n; k++) {
      Rational factor = Rational.of((long) (k + 1) * (n - k + 1), (long) k * (n - k));
      Rational square = e.get(k).times(e.get(k));
      Rational bound = factor.times(e.get(k - 1)).times(e.get(k + 1));
      if (square.compareTo(bound) < 0) {
        return fails(asked, k, factor, square, bound);
      }
    }
    return new Attempt.Declined("Newton's inequalities all hold, which proves nothing");
  }

  private Attempt fails(Asked asked, int k, Rational factor, Rational square, Rational bound) {
    Lines lines = new Lines(asked.problem().setting());
    CoefficientLines coefficients = CoefficientLines.of(asked.problem());
    TreeSet<Integer> wanted = new TreeSet<>(List.of(k, k + 1));
    if (k > 1) {
      wanted.add(k - 1);
    }
    coefficients.write(lines, wanted);
    List<Rational> e = coefficients.values();
    lines.add(
        Idea.INEQUALITY,
        "the left side",
        NamedForm.elementary(k).power(2),
        Formula.number(e.get(k)).power(2),
        Formula.number(square));
    lines.add(
        Idea.INEQUALITY,
        "what it would have to reach",
        product(factor, k == 1 ? Formula.number(1) : NamedForm.elementary(k - 1), k),
        Formula.number(bound));
    List<Step> steps = new ArrayList<>(lines.steps());
    steps.add(
        Step.argument(
            Idea.INEQUALITY,
            "for real roots Newton's inequality would make the left side at least as large",
            new Formula.Relation(
                List.of(Formula.number(square), Formula.number(bound)),
                List.of(Formula.Comparison.LESS))));
    return new Attempt.Worked(title(), steps, new Answer.Truth(false), List.of());
  }

  private static Formula product(Rational factor, Formula before, int k) {
    return Combination.product(
        List.of(Formula.number(factor), before, NamedForm.elementary(k + 1)));
  }
}
