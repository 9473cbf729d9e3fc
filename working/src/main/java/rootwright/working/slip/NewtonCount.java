package rootwright.working.slip;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.roots.PowerSums;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/** In p_k = e₁p_(k−1) − … ± k·e_k the k is taken as the number of roots. Common practice. */
final class NewtonCount implements Slip {

  @Override
  public String name() {
    return "newton-count";
  }

  @Override
  public String text() {
    return "The last term of Newton's identity has the factor k, the power, not n, the number of roots.";
  }

  @Override
  public Idea spot() {
    return Idea.NEWTON;
  }

  @Override
  public int weight() {
    return 5;
  }

  @Override
  public List<Rational> on(Asked asked) {
    int n = asked.problem().degree();
    Optional<Integer> index = asked.powerSumIndex().filter(k -> k >= 2 && k < n);
    if (index.isEmpty()) {
      return List.of();
    }
    int k = index.get();
    Rational last = ElementaryValues.of(asked.problem().polynomial()).get(k);
    Rational right = PowerSums.of(asked.problem().polynomial()).value(k);
    // The right identity has (−1)^(k−1)·k·e_k; this one has n in the place of k.
    Rational excess = last.times(n - k);
    return List.of(k % 2 == 1 ? right.plus(excess) : right.minus(excess));
  }
}
