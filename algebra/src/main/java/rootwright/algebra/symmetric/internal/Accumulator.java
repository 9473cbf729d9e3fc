package rootwright.algebra.symmetric.internal;

import java.util.Arrays;

/**
 * A growing sum of terms, word to coefficient, kept in the order in which the words first came: two
 * dense arrays, searched one by one while they are short, then through an open hash table. A
 * coefficient may become zero; the word stays. Not safe for use by several threads.
 */
final class Accumulator {

  private static final int SHORT = 8;
  private static final long GOLDEN = 0x9E3779B97F4A7C15L;

  private long[] keys;
  private long[] coefficients;
  private int[] places;
  private int size;

  Accumulator() {
    keys = new long[SHORT];
    coefficients = new long[SHORT];
    places = new int[0];
  }

  /** The coefficient of a word; zero if it never came. */
  long coefficientOf(long key) {
    int index = find(key);
    return index < 0 ? 0 : coefficients[index];
  }

  /**
   * Adds a term; says whether its word is new.
   *
   * @throws ArithmeticException if the sum leaves the range of {@code long}
   */
  boolean add(long key, long coefficient) {
    int index = find(key);
    if (index >= 0) {
      coefficients[index] = Math.addExact(coefficients[index], coefficient);
      return false;
    }
    if (size == keys.length) {
      grow();
    }
    keys[size] = key;
    coefficients[size] = coefficient;
    size++;
    if (places.length > 0) {
      places[place(key)] = size;
    }
    return true;
  }

  /** The terms with non-zero coefficients. */
  PackedPolynomial toPolynomial(Packing packing) {
    int kept = 0;
    for (int index = 0; index < size; index++) {
      kept += coefficients[index] == 0 ? 0 : 1;
    }
    long[] keptKeys = new long[kept];
    long[] keptCoefficients = new long[kept];
    int next = 0;
    for (int index = 0; index < size; index++) {
      if (coefficients[index] != 0) {
        keptKeys[next] = keys[index];
        keptCoefficients[next] = coefficients[index];
        next++;
      }
    }
    return new PackedPolynomial(packing, keptKeys, keptCoefficients);
  }

  /** Where a word stands; −1 if it never came. */
  private int find(long key) {
    if (places.length > 0) {
      return places[place(key)] - 1;
    }
    int index = size - 1;
    while (index >= 0 && keys[index] != key) {
      index--;
    }
    return index;
  }

  private int place(long key) {
    int mask = places.length - 1;
    int place = (int) ((key * GOLDEN) >>> 32) & mask;
    while (places[place] != 0 && keys[places[place] - 1] != key) {
      place = (place + 1) & mask;
    }
    return place;
  }

  private void grow() {
    keys = Arrays.copyOf(keys, 2 * size);
    coefficients = Arrays.copyOf(coefficients, 2 * size);
    places = new int[4 * size];
    for (int index = 0; index < size; index++) {
      places[place(keys[index])] = index + 1;
    }
  }
}
