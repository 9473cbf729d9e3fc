package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;
import rootwright.working.step.Idea;

/** Σ1/r taken as −e_(n−1)/e_n. Sign errors of this sort: Tong, Uyen, Thi and Lai 2017. */
final class ReciprocalSign extends PowerSumSlip {

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
  boolean isMetAt(int k, int n) {
    return k == -1;
  }

  @Override
  List<Rational> wrong(Polynomial p, int k) {
    return List.of(PowerSums.of(p).value(-1).negate());
  }
}
