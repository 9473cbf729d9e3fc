package rootwright.working.slip;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.roots.PowerSums;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/** Newton's identity with every sign plus. Common practice. */
final class NewtonAllPlus implements Slip {

  @Override
  public String name() {
    return "newton-all-plus";
  }

  @Override
  public String text() {
    return "The signs in Newton's identities alternate.";
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
    Optional<Integer> index = asked.powerSumIndex().filter(k -> k >= 3 && k <= n);
    if (index.isEmpty()) {
      return List.of();
    }
    int k = index.get();
    List<Rational> e = ElementaryValues.of(asked.problem().polynomial());
    PowerSums sums = PowerSums.of(asked.problem().polynomial());
    Rational sum = e.get(k).times(k);
    for (int j = 1; j < k; j++) {
      sum = sum.plus(e.get(j).times(sums.value(k - j)));
    }
    return List.of(sum);
  }
}
