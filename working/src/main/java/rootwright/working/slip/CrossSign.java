package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.step.Idea;

/** p₂ taken as e₁² + 2e₂. Manipulation errors of this sort: Didiş and Erbaş 2015. */
final class CrossSign extends PowerSumSlip {

  @Override
  public String name() {
    return "cross-sign";
  }

  @Override
  public String text() {
    return "The cross terms must be taken away, not added.";
  }

  @Override
  public Idea spot() {
    return Idea.EXPAND;
  }

  @Override
  public int weight() {
    return 15;
  }

  @Override
  boolean isMetAt(int k, int n) {
    return k == 2 && n >= 2;
  }

  @Override
  List<Rational> wrong(Polynomial p, int k) {
    List<Rational> e = ElementaryValues.of(p);
    return List.of(e.get(1).power(2).plus(e.get(2).times(2)));
  }
}
