package rootwright.working.slip;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/** p₂ taken as e₁² + 2e₂. Manipulation errors of this sort: Didiş and Erbaş 2015. */
final class CrossSign implements Slip {

  @Override
  public String name() {
    return "cross-sign";
  }

  @Override
  public String text() {
    return "The cross terms must be taken away, not added.";
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
    return List.of(e.get(1).power(2).plus(e.get(2).times(2)));
  }
}
