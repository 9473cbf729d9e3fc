package rootwright.working.slip;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.roots.PowerSums;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/** Σ1/r taken as e_n/e_(n−1). Rules used upside down: Didiş, Baş and Erbaş. */
final class FractionFlipped implements Slip {

  @Override
  public String name() {
    return "fraction-flipped";
  }

  @Override
  public String text() {
    return "Over the common denominator the product stands below: e_(n−1) over e_n.";
  }

  @Override
  public Idea spot() {
    return Idea.REVERSE;
  }

  @Override
  public int weight() {
    return 15;
  }

  @Override
  public List<Rational> on(Asked asked) {
    if (!asked.powerSumIndex().equals(Optional.of(-1))
        || asked.problem().polynomial().coefficient(0).isZero()) {
      return List.of();
    }
    Rational right = PowerSums.of(asked.problem().polynomial()).value(-1);
    return right.isZero() ? List.of() : List.of(right.reciprocal());
  }
}
