package rootwright.algebra.real;

import rootwright.algebra.factor.SquarefreeDecomposition;
import rootwright.algebra.factor.SquarefreeFactor;
import rootwright.algebra.polynomial.Polynomial;

/**
 * How many real roots a polynomial has.
 *
 * @param distinct each counted once
 * @param withMultiplicity each counted as often as it occurs
 */
public record RealRootCount(int distinct, int withMultiplicity) {

  /**
   * Counts by Sturm's theorem.
   *
   * @throws IllegalArgumentException for the zero polynomial
   */
  public static RealRootCount of(Polynomial polynomial) {
    int distinct = 0;
    int all = 0;
    for (SquarefreeFactor factor : SquarefreeDecomposition.of(polynomial)) {
      int count = SturmSequence.of(factor.polynomial()).count();
      distinct += count;
      all += count * factor.multiplicity();
    }
    return new RealRootCount(distinct, all);
  }
}
