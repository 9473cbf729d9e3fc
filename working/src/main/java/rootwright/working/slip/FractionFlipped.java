package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;
import rootwright.working.step.Idea;

/** Σ1/r taken as e_n/e_(n−1). Rules used upside down: Didiş, Baş and Erbaş. */
final class FractionFlipped extends PowerSumSlip {

  @Override
  public String name() {
    return "fraction-flipped";
  }

  @Override
  public String text() {
    return "Over the common denominator the product stands below: e_(n−1) over e_n.";
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
    Rational sum = PowerSums.of(p).value(-1);
    return sum.isZero() ? List.of() : List.of(sum.reciprocal());
  }
}
