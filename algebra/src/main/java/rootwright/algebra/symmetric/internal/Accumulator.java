package rootwright.algebra.symmetric.internal;

import java.util.Arrays;

/**
 * A growing sum of terms, word to coefficient, kept in the order in which the words first came: an
 * open hash table over two dense arrays. A coefficient may become zero; the word stays. Not safe
 * for use by several threads.
 */
final class Accumulator {

  private static final long GOLDEN = 0x9E3779B97F4A7C15L;

  private long[] keys;
  private long[] coefficients;
  private int[] places;
  private int size;

  Accumulator() {
    keys = new long[8];
    coefficients = new long[8];
    places = new int[16];
  }

  int size() {
    return size;
  }

  long key(int index) {
    return keys[index];
  }

  long coefficient(int index) {
    return coefficients[index];
  }

  /** The coefficient of a word; zero if it never came. */
  long coefficientOf(long key) {
    int found = places[place(key)];
    return found == 0 ? 0 : coefficients[found - 1];
  }

  /**
   * Adds a term; says whether its word is new.
   *
   * @throws ArithmeticException if the sum leaves the range of {@code long}
   */
  boolean add(long key, long coefficient) {
    int place = place(key);
    int found = places[place];
    if (found != 0) {
      coefficients[found - 1] = Math.addExact(coefficients[found - 1], coefficient);
      return false;
    }
    if (size == keys.length) {
      grow();
      place = place(key);
    }
    keys[size] = key;
    coefficients[size] = coefficient;
    size++;
    places[place] = size;
    return true;
  }

  /** The terms with non-zero coefficients. */
  PackedPolynomial toPolynomial(Packing packing) {
    long[] keptKeys = new long[size];
    long[] keptCoefficients = new long[size];
    int kept = 0;
    for (int index = 0; index < size; index++) {
      if (coefficients[index] != 0) {
        keptKeys[kept] = keys[index];
        keptCoefficients[kept] = coefficients[index];
        kept++;
      }
    }
    return kept == size
        ? new PackedPolynomial(packing, keptKeys, keptCoefficients)
        : new PackedPolynomial(
            packing, Arrays.copyOf(keptKeys, kept), Arrays.copyOf(keptCoefficients, kept));
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
