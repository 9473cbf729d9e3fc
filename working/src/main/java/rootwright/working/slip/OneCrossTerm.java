package rootwright.working.slip;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/**
 * p₂ taken as e₁² − e₂: the cross term 2rs counted once. Over-linear thinking: Matz 1982 (from
 * memory).
 */
final class OneCrossTerm implements Slip {

  @Override
  public String name() {
    return "one-cross-term";
  }

  @Override
  public String text() {
    return "Every product rs occurs twice in the square of the sum.";
  }

  @Override
  public Idea spot() {
    return Idea.EXPAND;
  }

  @Override
  public int weight() {
    return 15;
  }

  @Override
  public List<Rational> on(Asked asked) {
    if (!asked.powerSumIndex().equals(Optional.of(2)) || asked.problem().degree() < 2) {
      return List.of();
    }
    List<Rational> e = ElementaryValues.of(asked.problem().polynomial());
    return List.of(e.get(1).power(2).minus(e.get(2)));
  }
}
