package rootwright.working.letters;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.value.ExactValue;
import rootwright.working.answer.Answer;
import rootwright.working.route.Attempt;
import rootwright.working.route.RouteOn;
import rootwright.working.step.Idea;

/**
 * The least or greatest whole number at which the roots are of some nature.
 *
 * @param side “least” or “greatest”
 * @param number the number
 */
record FirstWholeNumber(String side, ExactValue number) implements RouteOn<RegionAsked> {

  @Override
  public String name() {
    return "first-whole-number";
  }

  @Override
  public String title() {
    return "all values of the letter first, then the %s whole number among them".formatted(side);
  }

  @Override
  public String teaches() {
    return "Whether an end belongs to the values decides whether a whole number there counts.";
  }

  @Override
  public Attempt attempt(RegionAsked asked) {
    LetterLines lines = new LetterLines();
    RegionByDiscriminant.write(lines, asked);
    lines.argue(
        Idea.DOMAIN, "together", IntervalFormula.of(asked.region().pieces(), asked.letter()));
    lines.argue(
        Idea.DOMAIN,
        "the %s whole number among them".formatted(side),
        Formula.equation(Formula.name(asked.letter()), number.toFormula()));
    return new Attempt.Worked(title(), lines.steps(), new Answer.Exact(number), List.of());
  }
}
