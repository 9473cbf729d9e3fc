package rootwright.working.letters;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.value.ExactValue;
import rootwright.working.answer.Answer;
import rootwright.working.route.Attempt;
import rootwright.working.route.RouteOn;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/** The letter is found first and put into the expression. */
record ValueByLetter(Formula expression, RationalFunction value, List<ExactValue> values)
    implements RouteOn<LettersAsked> {

  @Override
  public String name() {
    return "letter-first";
  }

  @Override
  public String title() {
    return "find the letter first and put it in";
  }

  @Override
  public String teaches() {
    return "What is asked may be a function of the letter, which the condition fixes.";
  }

  @Override
  public Attempt attempt(LettersAsked asked) {
    Attempt found = new ConditionInLetter().attempt(asked);
    if (!(found instanceof Attempt.Worked worked)) {
      return found;
    }
    LetterLines lines = new LetterLines();
    worked.steps().forEach(lines::write);
    List<String> letters = asked.problem().polynomial().letters();
    Formula general = InLetters.formula(value, letters);
    lines.add(asked.problem().setting(), Idea.BUILD, "symmetric in the roots", expression, general);
    for (ExactValue letter : asked.solution().kept()) {
      lines.add(
          Setting.ofLetters(List.of()),
          Idea.ARITHMETIC,
          "for %s = %s".formatted(asked.letter(), LetterSolution.text(letter)),
          put(general, asked.letter(), letter.toFormula()),
          ValueAtLetter.of(value, letter).toFormula());
    }
    return new Attempt.Worked(title(), lines.steps(), new Answer.Solutions(values), List.of());
  }

  private static Formula put(Formula general, String letter, Formula number) {
    return general.rewrite(part -> part.equals(Formula.name(letter)) ? number : part);
  }
}
