package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.roots.PowerSums;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/**
 * For k > n the recurrence ends with an e_n term counted twice, as in the identity for k = n.
 * Observed once in a hand-written recurrence.
 */
final class TruncatedRecurrence implements Slip {

  @Override
  public String name() {
    return "truncated-recurrence";
  }

  @Override
  public String text() {
    return "Beyond k = n every term of the recurrence is a product of an e and an earlier power sum, taken once.";
  }

  @Override
  public Idea spot() {
    return Idea.RECURRENCE;
  }

  @Override
  public int weight() {
    return 5;
  }

  @Override
  public List<Rational> on(Asked asked) {
    int n = asked.problem().degree();
    return asked
        .powerSumIndex()
        .filter(k -> k > n && k <= 400)
        .map(k -> List.of(wrong(asked, n, k)))
        .orElse(List.of());
  }

  private static Rational wrong(Asked asked, int n, int k) {
    PowerSums sums = PowerSums.of(asked.problem().polynomial());
    Rational last =
        ElementaryValues.of(asked.problem().polynomial()).get(n).times(sums.value(k - n));
    return n % 2 == 1 ? sums.value(k).plus(last) : sums.value(k).minus(last);
  }
}
