package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.roots.PowerSums;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/** The table of power sums read one row too early or too late. Common practice. */
final class IndexOffByOne implements Slip {

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
  public List<Rational> on(Asked asked) {
    int n = asked.problem().degree();
    PowerSums sums = PowerSums.of(asked.problem().polynomial());
    return asked
        .powerSumIndex()
        .filter(k -> k > n && k <= 400)
        .map(k -> List.of(sums.value(k - 1), sums.value(k + 1)))
        .orElse(List.of());
  }
}
