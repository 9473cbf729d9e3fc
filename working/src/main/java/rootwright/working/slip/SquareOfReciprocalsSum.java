package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;
import rootwright.working.step.Idea;

/** Σ1/r² taken as (Σ1/r)² or as 1/Σr². Over-linear thinking: Matz 1982 (from memory). */
final class SquareOfReciprocalsSum extends PowerSumSlip {

  @Override
  public String name() {
    return "square-of-reciprocals-sum";
  }

  @Override
  public String text() {
    return "Turn the polynomial round first; then it is a sum of squares like any other.";
  }

  @Override
  public Idea spot() {
    return Idea.REVERSE;
  }

  @Override
  public int weight() {
    return 10;
  }

  @Override
  boolean isMetAt(int k, int n) {
    return k == -2;
  }

  @Override
  List<Rational> wrong(Polynomial p, int k) {
    PowerSums sums = PowerSums.of(p);
    Rational squared = sums.value(-1).power(2);
    Rational below = sums.value(2);
    return below.isZero() ? List.of(squared) : List.of(squared, below.reciprocal());
  }
}
