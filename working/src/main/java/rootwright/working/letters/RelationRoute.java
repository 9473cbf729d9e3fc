package rootwright.working.letters;

import java.util.List;
import rootwright.working.answer.Answer;
import rootwright.working.route.Attempt;
import rootwright.working.route.RouteOn;
import rootwright.working.step.Idea;

/** The product over all namings, worked out in the letters, is zero. */
record RelationRoute(LetterEquation equation, Answer answer) implements RouteOn<LetteredProblem> {

  @Override
  public String name() {
    return "condition-in-letter";
  }

  @Override
  public String title() {
    return "write the condition in the letters";
  }

  @Override
  public String teaches() {
    return "A product over all namings is symmetric, and it is zero when one factor is.";
  }

  @Override
  public Attempt attempt(LetteredProblem problem) {
    LetterLines lines = new LetterLines();
    Vieta vieta = new Vieta(problem);
    for (int k = 1; k <= problem.polynomial().degree(); k++) {
      vieta.write(lines, k);
    }
    lines.add(
        equation.setting(),
        Idea.ELIMINATE,
        "0 exactly when the condition holds for some naming",
        equation.expression(),
        equation.written());
    lines.argue(Idea.STATE, "so", answer.formula());
    return new Attempt.Worked(title(), lines.steps(), answer, List.<String>of());
  }
}
