package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/** Tells whether all roots are real by counting the distinct real ones. */
final class AllRealByCount implements Route {

  private final Route count;

  AllRealByCount(Route count) {
    this.count = count;
  }

  @Override
  public String name() {
    return count.name();
  }

  @Override
  public String title() {
    return count.title();
  }

  @Override
  public String teaches() {
    return count.teaches();
  }

  @Override
  public Attempt attempt(Asked asked) {
    if (!(count.attempt(asked) instanceof Attempt.Worked worked)
        || !(worked.answer() instanceof Answer.Count real)) {
      return count.attempt(asked);
    }
    int distinct = asked.problem().polynomial().squarefreePart().degree();
    boolean all = real.number().intValueExact() == distinct;
    List<Step> steps = new ArrayList<>(worked.steps());
    steps.add(
        Step.argument(
            Idea.CASES,
            distinct == asked.problem().degree()
                ? "there are %d roots, all different".formatted(distinct)
                : "there are %d different roots".formatted(distinct),
            new Formula.Words(
                all
                    ? "all roots are real"
                    : "%s of %d are real: not all".formatted(real.number(), distinct))));
    return new Attempt.Worked(worked.title(), steps, new Answer.Truth(all), worked.conditions());
  }
}
