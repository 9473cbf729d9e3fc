package rootwright.working.slip;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.roots.PowerSums;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/** Σ1/r taken as −e_(n−1)/e_n. Sign errors of this sort: Tong, Uyen, Thi and Lai 2017. */
final class ReciprocalSign implements Slip {

  @Override
  public String name() {
    return "reciprocal-sign";
  }

  @Override
  public String text() {
    return "Both e_(n−1) and e_n carry their own sign; their quotient is minus a₁ over a₀ whatever the degree.";
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
    return List.of(right.negate());
  }
}
