package rootwright.algebra.symmetric.internal;

import java.math.BigInteger;

/**
 * All sums λ + β of a fixed exponent vector λ and the distinct rearrangements β of another. Places
 * where λ is equal are not told apart: each way to share the parts among the groups of equal places
 * is reported once, with the number of rearrangements it stands for.
 */
public final class Rearrangements {

  /** Receives one sum; the array is reused. */
  public interface Sink {
    /** A vector λ + β, not sorted, and how many rearrangements β look like it. */
    void accept(int[] sum, BigInteger rearrangements);
  }

  private final int[] fixed;
  private final int[] values;
  private final int[] left;
  private final int[] sum;
  private final Sink sink;

  private Rearrangements(int[] fixed, int[] moving, Sink sink) {
    this.fixed = fixed;
    this.sink = sink;
    sum = new int[fixed.length];
    values = new int[moving.length];
    left = new int[moving.length];
    int kinds = 0;
    for (int k = 0; k < moving.length; k++) {
      if (k == 0 || moving[k] != moving[k - 1]) {
        values[kinds++] = moving[k];
      }
      left[kinds - 1]++;
    }
  }

  /** Both vectors descending and of one length, with their zeros. */
  public static void forEachSum(int[] fixed, int[] moving, Sink sink) {
    new Rearrangements(fixed, moving, sink).place(0, 0, 0, BigInteger.ONE);
  }

  /**
   * Fills the places from {@code place} on. Within a group of equal places parts come in descending
   * order, that is with kinds from {@code kind} on; {@code ways} counts the orders they stand for.
   */
  private void place(int place, int kind, int filled, BigInteger ways) {
    if (place == fixed.length) {
      sink.accept(sum, ways);
      return;
    }
    boolean newGroup = place == 0 || fixed[place] != fixed[place - 1];
    int first = newGroup ? 0 : kind;
    int inGroup = newGroup ? 0 : filled;
    int run = 0;
    if (!newGroup) {
      int part = values[kind];
      while (run < inGroup && sum[place - 1 - run] == fixed[place] + part) {
        run++;
      }
    }
    for (int next = first; next < values.length; next++) {
      if (left[next] > 0) {
        int same = next == kind ? run : 0;
        left[next]--;
        sum[place] = fixed[place] + values[next];
        // The multinomial of the group, one place at a time: ·(filled + 1)/(equal ones so far + 1).
        place(
            place + 1,
            next,
            inGroup + 1,
            ways.multiply(BigInteger.valueOf(inGroup + 1L)).divide(BigInteger.valueOf(same + 1L)));
        left[next]++;
      }
    }
  }
}
