package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.step.Idea;

/** Newton's identity with every sign plus. Common practice. */
final class NewtonAllPlus extends PowerSumSlip {

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
  boolean isMetAt(int k, int n) {
    return k >= 3 && k <= n;
  }

  @Override
  List<Rational> wrong(Polynomial p, int k) {
    List<Rational> e = ElementaryValues.of(p);
    PowerSums sums = PowerSums.of(p);
    Rational sum = e.get(k).times(k);
    for (int j = 1; j < k; j++) {
      sum = sum.plus(e.get(j).times(sums.value(k - j)));
    }
    return List.of(sum);
  }
}
