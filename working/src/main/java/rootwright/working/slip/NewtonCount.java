package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.step.Idea;

/** In p_k = e₁p_(k−1) − … ± k·e_k the k is taken as the number of roots. Common practice. */
final class NewtonCount extends PowerSumSlip {

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
  boolean isMetAt(int k, int n) {
    return k >= 2 && k < n;
  }

  @Override
  List<Rational> wrong(Polynomial p, int k) {
    int n = p.degree();
    // The right identity has (−1)^(k−1)·k·e_k; this one has n in the place of k.
    Rational excess = ElementaryValues.of(p).get(k).times(n - k);
    Rational sum = PowerSums.of(p).value(k);
    return List.of(k % 2 == 1 ? sum.plus(excess) : sum.minus(excess));
  }
}
