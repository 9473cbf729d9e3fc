package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.step.Idea;

/**
 * For k > n the recurrence ends with an e_n term counted twice, as in the identity for k = n.
 * Observed once in a hand-written recurrence.
 */
final class TruncatedRecurrence extends PowerSumSlip {

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
  boolean isMetAt(int k, int n) {
    return k > n && k <= FARTHEST;
  }

  @Override
  List<Rational> wrong(Polynomial p, int k) {
    int n = p.degree();
    PowerSums sums = PowerSums.of(p);
    Rational last = ElementaryValues.of(p).get(n).times(sums.value(k - n));
    return List.of(n % 2 == 1 ? sums.value(k).plus(last) : sums.value(k).minus(last));
  }
}
