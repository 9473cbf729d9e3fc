package rootwright.algebra.symmetric.internal;

/**
 * The product of a monomial symmetric function with an elementary one: m_λ·e_k = Σ c_μ m_μ over the
 * partitions μ with μ/λ a vertical strip of size k.
 *
 * <p>c_μ counts the 0–1 vectors v of weight k for which μ − v is a rearrangement of λ. Raising the
 * first j_v of the parts of λ equal to v gives each μ once; among the parts of μ equal to v + 1 any
 * j_v may be the raised ones, so c_μ is the product of binomials C(j_v + parts of λ left at v + 1,
 * j_v). Derived from the definition; the rule without multiplicities would be Pieri's rule, which
 * belongs to Schur functions (Macdonald, Symmetric Functions and Hall Polynomials, I.5).
 */
final class VerticalStrips {

  /** Rows whose every entry fits into a {@code long}. */
  static final int ROWS = 67;

  private static final long[][] BINOMIALS = binomials(ROWS);

  private final Packing packing;
  private final int[] starts;
  private final int[] values;
  private int groups;
  private Accumulator sum = new Accumulator();

  VerticalStrips(Packing packing) {
    this.packing = packing;
    starts = new int[packing.slots() + 1];
    values = new int[packing.slots()];
  }

  static long binomial(int of, int choose) {
    return BINOMIALS[of][choose];
  }

  /**
   * Adds {@code coefficient}·m_λ·e_k to a sum.
   *
   * @throws ArithmeticException if a coefficient leaves the range of {@code long}
   */
  void addProduct(Accumulator target, long partition, int k, long coefficient) {
    groups = 0;
    for (int slot = 0; slot < packing.slots(); slot++) {
      int value = packing.at(partition, slot);
      if (groups == 0 || values[groups - 1] != value) {
        starts[groups] = slot;
        values[groups] = value;
        groups++;
      }
    }
    starts[groups] = packing.slots();
    sum = target;
    raise(0, k, partition, coefficient, 0);
  }

  private void raise(int group, int left, long key, long coefficient, int keptAbove) {
    if (left == 0) {
      sum.add(key, coefficient);
      return;
    }
    int start = starts[group];
    int size = starts[group + 1] - start;
    int beyond = packing.slots() - starts[group + 1];
    int mergesWith = group > 0 && values[group - 1] == values[group] + 1 ? keptAbove : 0;
    for (int raised = Math.max(0, left - beyond); raised <= Math.min(size, left); raised++) {
      long ways = mergesWith == 0 ? 1 : BINOMIALS[raised + mergesWith][raised];
      raise(
          group + 1,
          left - raised,
          key + packing.ones(start + raised) - packing.ones(start),
          ways == 1 ? coefficient : Math.multiplyExact(coefficient, ways),
          size - raised);
    }
  }

  private static long[][] binomials(int rows) {
    long[][] triangle = new long[rows][];
    for (int row = 0; row < rows; row++) {
      triangle[row] = new long[row + 1];
      triangle[row][0] = 1;
      triangle[row][row] = 1;
      for (int k = 1; k < row; k++) {
        triangle[row][k] = triangle[row - 1][k - 1] + triangle[row - 1][k];
      }
    }
    return triangle;
  }
}
