package rootwright.working.slip;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.roots.PowerSums;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/** The recurrence of the power sums started with p₀ = 1. Common practice. */
final class PowerSumZeroIsOne implements Slip {

  @Override
  public String name() {
    return "p0-is-1";
  }

  @Override
  public String text() {
    return "p₀ is the number of roots, since every r⁰ is 1.";
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
        .filter(k -> k >= n && k <= n + 60)
        .map(k -> List.of(recurrence(asked, n, k)))
        .orElse(List.of());
  }

  private static Rational recurrence(Asked asked, int n, int k) {
    List<Rational> e = ElementaryValues.of(asked.problem().polynomial());
    List<Rational> p = new ArrayList<>(PowerSums.of(asked.problem().polynomial()).upTo(n - 1));
    p.set(0, Rational.ONE);
    while (p.size() <= k) {
      Rational next = Rational.ZERO;
      for (int j = 1; j <= n; j++) {
        Rational term = e.get(j).times(p.get(p.size() - j));
        next = j % 2 == 1 ? next.plus(term) : next.minus(term);
      }
      p.add(next);
    }
    return p.get(k);
  }
}
