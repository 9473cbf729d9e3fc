package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;
import rootwright.working.step.Idea;

/** The table of power sums read one row too early or too late. Common practice. */
final class IndexOffByOne extends PowerSumSlip {

  @Override
  public String name() {
    return "index-off-by-one";
  }

  @Override
  public String text() {
    return "Number the rows of the table from S₀ on.";
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
    PowerSums sums = PowerSums.of(p);
    return List.of(sums.value(k - 1), sums.value(k + 1));
  }
}
