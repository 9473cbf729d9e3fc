package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/** A sum of squares that is positive is taken as proof that all roots are real. */
final class SquaresPositiveMeansReal implements Turning {

  @Override
  public String name() {
    return "squares-positive";
  }

  @Override
  public String text() {
    return "A positive sum of squares proves nothing: one large real root outweighs a pair that is not real.";
  }

  @Override
  public Idea spot() {
    return Idea.INEQUALITY;
  }

  @Override
  public int weight() {
    return 15;
  }

  @Override
  public List<? extends Answer> answers(Asked asked) {
    List<Rational> e = ElementaryValues.of(asked.problem().polynomial());
    if (e.size() < 3) {
      return List.of();
    }
    Rational squares = e.get(1).times(e.get(1)).minus(e.get(2).times(2));
    return squares.signum() > 0 ? List.of(new Answer.Truth(true)) : List.of();
  }
}
