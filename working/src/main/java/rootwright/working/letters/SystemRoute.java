package rootwright.working.letters;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.working.route.Attempt;
import rootwright.working.route.RouteOn;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/** Every condition gives an equation between the letters; the system is solved. */
final class SystemRoute implements RouteOn<SystemAsked> {

  @Override
  public String name() {
    return "condition-in-letter";
  }

  @Override
  public String title() {
    return "write every condition in the letters and solve the system";
  }

  @Override
  public String teaches() {
    return "Every condition on the roots is one equation between the coefficients.";
  }

  @Override
  public Attempt attempt(SystemAsked asked) {
    LetterLines lines = new LetterLines();
    for (LetterEquation equation : asked.equations()) {
      lines.add(
          equation.setting(),
          Idea.ELIMINATE,
          "must be 0",
          equation.expression(),
          equation.written());
    }
    List<Formula> rows = asked.rows().stream().map(asked::shown).toList();
    lines.write(
        new Step(
            rows.isEmpty()
                ? new Formula.Words("no solution")
                : rows.size() == 1 ? rows.get(0) : new Formula.Listing(rows),
            "all solutions of the system",
            Idea.CASES,
            asked.claim()));
    for (String reason : asked.reasons()) {
      lines.argue(Idea.DOMAIN, "thrown out", new Formula.Words(reason));
    }
    if (!asked.reasons().isEmpty()) {
      lines.argue(Idea.DOMAIN, "what is left", asked.answer().formula());
    }
    return new Attempt.Worked(title(), lines.steps(), asked.answer(), List.of());
  }
}
