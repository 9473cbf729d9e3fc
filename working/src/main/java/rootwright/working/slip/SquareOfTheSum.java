package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;
import rootwright.working.step.Idea;

/**
 * p_k taken as e₁^k: the square of a sum as the sum of the squares. Over-linear thinking: Matz
 * 1982; De Bock, Van Dooren and Verschaffel (both from memory).
 */
final class SquareOfTheSum extends PowerSumSlip {

  /** Beyond, nobody would write the power of the sum out. */
  private static final int HIGHEST_POWER = 64;

  @Override
  public String name() {
    return "square-of-the-sum";
  }

  @Override
  public String text() {
    return "The square of the sum has cross terms; the sum of the squares does not.";
  }

  @Override
  public Idea spot() {
    return Idea.EXPAND;
  }

  @Override
  public int weight() {
    return 20;
  }

  @Override
  boolean isMetAt(int k, int n) {
    return k >= 2 && k <= HIGHEST_POWER;
  }

  @Override
  List<Rational> wrong(Polynomial p, int k) {
    return List.of(PowerSums.of(p).value(1).power(k));
  }
}
