package rootwright.working.route;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/**
 * Power sums with a negative index: those of the reciprocals, whose polynomial has the coefficients
 * in reverse order, by Newton's identities.
 */
final class ReversedSums implements Route {

  private static final int HIGHEST_INDEX = 12;

  @Override
  public String name() {
    return "reversed-sums";
  }

  @Override
  public String title() {
    return "power sums of the reciprocals";
  }

  @Override
  public String teaches() {
    return "Turned round, the coefficients belong to the reciprocals of the roots.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Optional<Integer> index = asked.powerSumIndex().filter(k -> k < -1);
    if (index.isEmpty()) {
      return new Attempt.Declined("the ask is no sum of powers of 1/r");
    } else if (asked.problem().polynomial().coefficient(0).isZero()) {
      return Reasons.ZERO_DENOMINATOR;
    } else if (-index.get() > HIGHEST_INDEX) {
      return new Attempt.Declined("the index is too far out to go step by step");
    }
    return worked(asked, -index.get());
  }

  private Attempt worked(Asked asked, int k) {
    Problem problem = asked.problem();
    Polynomial reversed = problem.polynomial().reversed().primitive();
    String z = FreshNames.letter(problem);
    List<String> names = FreshNames.indexed(z, problem.degree());
    Formula turned = Formula.number(1).over(Formula.name(problem.roots().get(0)));
    Lines lines = new Lines(problem.setting());
    lines.addRoots(
        Idea.REVERSE,
        "turn the coefficients round; the roots are now 1/" + problem.roots().get(0),
        Formula.equation(PolynomialFormula.of(reversed, z), Formula.number(0)),
        new Claim.HasRoots(problem.setting(), reversed, turned));
    PowerSumLines sums =
        new PowerSumLines(
            new CoefficientLines(reversed, names, z), reversed, PowerSumLines.letter(asked), k);
    sums.write(lines.in(Setting.of(reversed, names)), List.of(k));
    Rational value = sums.values().get(k);
    lines.add(
        Idea.STATE,
        "the sum of these powers of the reciprocals",
        asked.formula(),
        Formula.number(value));
    return Attempt.Worked.of(title(), lines.steps(), value);
  }
}
