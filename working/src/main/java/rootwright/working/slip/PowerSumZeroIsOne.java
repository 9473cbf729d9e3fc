package rootwright.working.slip;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.step.Idea;

/** The recurrence of the power sums started with p₀ = 1. Common practice. */
final class PowerSumZeroIsOne extends PowerSumSlip {

  /** So many rows of a table are filled by hand, and no more. */
  private static final int MOST_ROWS = 60;

  @Override
  public String name() {
    return "p0-is-1";
  }

  @Override
  public String text() {
    return "Every r⁰ is 1, so the sum of the powers 0 is the number of roots, not 1.";
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
    return k >= n && k <= n + MOST_ROWS;
  }

  @Override
  List<Rational> wrong(Polynomial p, int k) {
    int n = p.degree();
    List<Rational> e = ElementaryValues.of(p);
    List<Rational> sums = new ArrayList<>(PowerSums.of(p).upTo(n - 1));
    sums.set(0, Rational.ONE);
    while (sums.size() <= k) {
      Rational next = Rational.ZERO;
      for (int j = 1; j <= n; j++) {
        Rational term = e.get(j).times(sums.get(sums.size() - j));
        next = j % 2 == 1 ? next.plus(term) : next.minus(term);
      }
      sums.add(next);
    }
    return List.of(sums.get(k));
  }
}
