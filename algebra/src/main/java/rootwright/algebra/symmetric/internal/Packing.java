package rootwright.algebra.symmetric.internal;

/**
 * How a vector of small numbers is packed into one non-negative {@code long}: the first number in
 * the highest bits, so that the order of the words is the lexicographic order of the vectors.
 *
 * @param slots how many numbers a word holds, 1 to 31
 */
public record Packing(int slots) {

  private static final int WORD = 63;

  public Packing {
    if (slots < 1 || slots > WORD / 2) {
      throw new IllegalArgumentException("a word does not hold " + slots + " numbers");
    }
  }

  /** Whether vectors of this many numbers, none above {@code greatest}, fit into one word. */
  public static boolean fits(int slots, int greatest) {
    return slots >= 1 && slots <= WORD / 2 && greatest <= new Packing(slots).capacity();
  }

  /** Bits for each number. */
  int bits() {
    return WORD / slots;
  }

  /** The greatest number a slot holds. */
  public int capacity() {
    return (int) Math.min(Integer.MAX_VALUE, (1L << bits()) - 1);
  }

  int shift(int slot) {
    return bits() * (slots - 1 - slot);
  }

  /** The number in a slot. */
  public int at(long key, int slot) {
    return (int) (key >>> shift(slot)) & capacity();
  }

  /** The word for a vector that may be shorter than the slots; no number above the capacity. */
  public long pack(int... numbers) {
    long key = 0;
    for (int slot = 0; slot < numbers.length; slot++) {
      if (numbers[slot] > capacity()) {
        throw new ArithmeticException(numbers[slot] + " does not fit into " + bits() + " bits");
      }
      key |= (long) numbers[slot] << shift(slot);
    }
    return key;
  }

  /** The vector in a word. */
  public int[] unpack(long key) {
    int[] numbers = new int[slots];
    for (int slot = 0; slot < slots; slot++) {
      numbers[slot] = at(key, slot);
    }
    return numbers;
  }

  /** The word with a one in each of the first {@code count} slots. */
  long ones(int count) {
    long key = 0;
    for (int slot = 0; slot < count; slot++) {
      key |= 1L << shift(slot);
    }
    return key;
  }

  /**
   * From a partition to the exponents of the product of elementary functions whose leading term it
   * is: e_k occurs λ_k − λ_(k+1) times.
   */
  long differences(long partition) {
    return partition - ((partition << bits()) & wordMask());
  }

  private long wordMask() {
    return bits() * slots == WORD ? Long.MAX_VALUE : (1L << (bits() * slots)) - 1;
  }

  /** From the exponents of a product of elementary functions to its leading partition. */
  public long sums(long exponents) {
    long key = 0;
    int sum = 0;
    for (int slot = slots - 1; slot >= 0; slot--) {
      sum += at(exponents, slot);
      if (sum > capacity()) {
        throw new ArithmeticException(sum + " does not fit into " + bits() + " bits");
      }
      key |= (long) sum << shift(slot);
    }
    return key;
  }
}
