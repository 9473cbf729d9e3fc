package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.step.Idea;

/**
 * p₂ taken as e₁² − e₂: the cross term 2rs counted once. Over-linear thinking: Matz 1982 (from
 * memory).
 */
final class OneCrossTerm extends PowerSumSlip {

  @Override
  public String name() {
    return "one-cross-term";
  }

  @Override
  public String text() {
    return "Every product rs occurs twice in the square of the sum.";
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
    return List.of(e.get(1).power(2).minus(e.get(2)));
  }
}
