package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.roots.PowerSums;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/**
 * p_k taken as e₁^k: the square of a sum as the sum of the squares. Over-linear thinking: Matz
 * 1982; De Bock, Van Dooren and Verschaffel (both from memory).
 */
final class SquareOfTheSum implements Slip {

  @Override
  public String name() {
    return "square-of-the-sum";
  }

  @Override
  public String text() {
    return "The square of the sum has cross terms; the sum of the squares does not.";
  }

  @Override
  public Idea spot() {
    return Idea.EXPAND;
  }

  @Override
  public int weight() {
    return 20;
  }

  @Override
  public List<Rational> on(Asked asked) {
    return asked
        .powerSumIndex()
        .filter(k -> k >= 2 && k <= 64)
        .map(k -> List.of(PowerSums.of(asked.problem().polynomial()).value(1).power(k)))
        .orElse(List.of());
  }
}
