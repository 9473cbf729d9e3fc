package rootwright.algebra.symmetric.internal;

/**
 * How a vector of small numbers is packed into one non-negative {@code long}: the first number in
 * the highest bits, so that the order of the words is the lexicographic order of the vectors.
 */
public final class Packing {

  private static final int WORD = 63;
  private static final int MOST_SLOTS = 31;
  private static final Packing[] ALL = all();

  private final int slots;
  private final int bits;
  private final int capacity;
  private final long mask;

  /** Ones in the first 0, 1, …, n slots. */
  private final long[] ones;

  private Packing(int slots) {
    this.slots = slots;
    bits = WORD / slots;
    capacity = (int) Math.min(Integer.MAX_VALUE, (1L << bits) - 1);
    mask = Long.MAX_VALUE >>> (WORD - bits * slots);
    ones = new long[slots + 1];
    for (int count = 1; count <= slots; count++) {
      ones[count] = ones[count - 1] | 1L << shift(count - 1);
    }
  }

  private static Packing[] all() {
    Packing[] all = new Packing[MOST_SLOTS + 1];
    for (int slots = 1; slots < all.length; slots++) {
      all[slots] = new Packing(slots);
    }
    return all;
  }

  /**
   * The packing with this many slots.
   *
   * @throws IllegalArgumentException if a word does not hold so many numbers
   */
  public static Packing of(int slots) {
    if (slots < 1 || slots > MOST_SLOTS) {
      throw new IllegalArgumentException("a word does not hold " + slots + " numbers");
    }
    return ALL[slots];
  }

  /** Whether vectors of this many numbers, none above {@code greatest}, fit into one word. */
  public static boolean fits(int slots, int greatest) {
    return slots >= 1 && slots <= MOST_SLOTS && greatest <= ALL[slots].capacity;
  }

  /** How many numbers a word holds. */
  public int slots() {
    return slots;
  }

  int shift(int slot) {
    return bits * (slots - 1 - slot);
  }

  /** The number in a slot. */
  public int at(long key, int slot) {
    return (int) (key >>> shift(slot)) & capacity;
  }

  /** The word for a vector that may be shorter than the slots; no number above the capacity. */
  public long pack(int... numbers) {
    long key = 0;
    for (int slot = 0; slot < numbers.length; slot++) {
      if (numbers[slot] > capacity) {
        throw new ArithmeticException(numbers[slot] + " does not fit into " + bits + " bits");
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

  /** The word with a one in each of the first {@code count} slots: the partition of e_count. */
  long ones(int count) {
    return ones[count];
  }

  /**
   * From a partition to the exponents of the product of elementary functions whose leading term it
   * is: e_k occurs λ_k − λ_(k+1) times.
   */
  long differences(long partition) {
    return partition - ((partition << bits) & mask);
  }
}
