package rootwright.algebra.symmetric.internal;

import java.util.Arrays;

/**
 * The closed form of a power sum in elementary functions, after Girard (1629) and Waring (1762):
 * p_k = Σ (−1)^(k+a) k·(a−1)!/(a_1!⋯a_n!)·e_1^a_1⋯e_n^a_n over Σ i·a_i = k, with a = Σ a_i.
 */
public final class PackedPowerSum {

  private final Packing packing;
  private final int k;
  private final long factor;
  private long[] keys = new long[16];
  private long[] coefficients = new long[16];
  private int size;

  private PackedPowerSum(Packing packing, int k, long factor) {
    this.packing = packing;
    this.k = k;
    this.factor = factor;
  }

  /**
   * A coefficient times the power sum p_k, k ≥ 1, for as many variables as the packing has slots.
   *
   * @throws ArithmeticException if a coefficient leaves the range of {@code long}
   */
  public static PackedPolynomial of(Packing packing, int k, long coefficient) {
    if (k >= VerticalStrips.ROWS) {
      throw new ArithmeticException("the coefficients of p_" + k + " do not fit into a word");
    }
    PackedPowerSum powerSum = new PackedPowerSum(packing, k, coefficient);
    powerSum.choose(Math.min(packing.slots(), k), k, 0, 0, 1);
    return new PackedPolynomial(
        packing,
        Arrays.copyOf(powerSum.keys, powerSum.size),
        Arrays.copyOf(powerSum.coefficients, powerSum.size));
  }

  /** Chooses a_i for this i and all below; {@code orders} is the multinomial of those chosen. */
  private void choose(int i, int left, int chosen, long key, long orders) {
    if (i == 1) {
      int total = chosen + left;
      long counted = Math.multiplyExact(orders, VerticalStrips.binomial(total, left));
      long size = Math.multiplyExact(counted, (long) k) / total;
      append(key + ((long) left << packing.shift(0)), (k + total) % 2 == 0 ? size : -size);
      return;
    }
    for (int count = 0; count * i <= left; count++) {
      int total = chosen + count;
      choose(
          i - 1,
          left - count * i,
          total,
          key + ((long) count << packing.shift(i - 1)),
          count == 0 || chosen == 0
              ? orders
              : Math.multiplyExact(orders, VerticalStrips.binomial(total, count)));
    }
  }

  private void append(long key, long coefficient) {
    if (size == keys.length) {
      keys = Arrays.copyOf(keys, 2 * size);
      coefficients = Arrays.copyOf(coefficients, 2 * size);
    }
    keys[size] = key;
    coefficients[size] = factor == 1 ? coefficient : Math.multiplyExact(coefficient, factor);
    size++;
  }
}
