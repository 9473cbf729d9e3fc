package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.Asked;

/** A slip on the way to one power sum p_k of the roots, k negative where no root is zero. */
abstract class PowerSumSlip implements Slip {

  /** Further out nobody follows a recurrence by hand, so nobody slips on it. */
  static final int FARTHEST = 400;

  @Override
  public final List<Rational> on(Asked asked) {
    Polynomial p = asked.problem().polynomial();
    return asked
        .powerSumIndex()
        .filter(k -> isMetAt(k, p.degree()))
        .filter(k -> k > 0 || !p.coefficient(0).isZero())
        .map(k -> wrong(p, k))
        .orElse(List.of());
  }

  /** Whether the k-th power sum of n roots is a place for this slip. */
  abstract boolean isMetAt(int k, int n);

  /** What is taken for the k-th power sum of the roots of p, the likeliest first. */
  abstract List<Rational> wrong(Polynomial p, int k);
}
