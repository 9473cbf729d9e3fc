package rootwright.algebra.symmetric.internal;

import rootwright.algebra.stop.Stop;

/**
 * From monomial symmetric functions to elementary ones: match the lexicographically largest
 * partition with the product of elementary functions that leads with it, subtract, repeat.
 *
 * <p>The method is Gauss's (Demonstratio nova altera, 1816, section 4), on orbits instead of terms.
 */
public final class PackedReduction {

  private final Packing packing;
  private final Accumulator remainder = new Accumulator();
  private final Descending queue = new Descending();
  private PackedPolynomial powerSums;

  /** For as many variables as the packing has slots. */
  public PackedReduction(Packing packing) {
    this.packing = packing;
    powerSums = PackedPolynomial.term(packing, 0, 0);
  }

  /**
   * Adds a term to what is to be reduced.
   *
   * @throws ArithmeticException if a coefficient leaves the range of {@code long}
   */
  public void add(long partition, long coefficient) {
    if (remainder.add(partition, coefficient)) {
      queue.enter(partition);
    }
  }

  /**
   * Adds a coefficient times the power sum p_k, whose closed form needs no loop.
   *
   * @throws ArithmeticException if a coefficient leaves the range of {@code long}
   */
  public void addPowerSum(int k, long coefficient) {
    PackedPolynomial powerSum = PackedPowerSum.of(packing, k, coefficient);
    powerSums = powerSums.size() == 0 ? powerSum : powerSums.plus(powerSum);
  }

  /**
   * Reduces what was added; the words of the result are exponents of e_1, e_2, ….
   *
   * @throws ArithmeticException if a coefficient leaves the range of {@code long}
   */
  public PackedPolynomial reduce() {
    if (queue.isEmpty()) {
      return powerSums;
    }
    ElementaryProducts products = new ElementaryProducts(packing);
    Accumulator result = new Accumulator();
    for (int index = 0; index < powerSums.size(); index++) {
      result.add(powerSums.key(index), powerSums.coefficient(index));
    }
    while (!queue.isEmpty()) {
      Stop.ifUnwanted();
      long leading = queue.next();
      long coefficient = remainder.coefficientOf(leading);
      if (coefficient != 0) {
        result.add(packing.differences(leading), coefficient);
        products.addTo(remainder, queue, leading, Math.negateExact(coefficient));
      }
    }
    return result.toPolynomial(packing);
  }
}
