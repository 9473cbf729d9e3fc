package rootwright.composing.scan.candidate;

import java.util.Arrays;

/** The candidates of a row that are still in: a set of places from 0 to length − 1, as bits. */
public final class Survivors {

  private final long[] words;
  private int used;

  /** An empty set for rows up to this length. */
  public Survivors(int longest) {
    words = new long[(longest + 63) >>> 6];
  }

  /** Puts in exactly the places 0 to length − 1. */
  public void fill(int length) {
    used = (length + 63) >>> 6;
    Arrays.fill(words, 0, used, -1L);
    if ((length & 63) != 0) {
      words[used - 1] = -1L >>> -length;
    }
  }

  /** Takes all places out, for a row of this length. */
  public void clear(int length) {
    used = (length + 63) >>> 6;
    Arrays.fill(words, 0, used, 0);
  }

  /** Takes all places out. */
  public void removeAll() {
    Arrays.fill(words, 0, used, 0);
  }

  /** Takes a place out. */
  public void remove(int place) {
    words[place >> 6] &= ~(1L << place);
  }

  /** Takes out every step-th place from {@code first} on. */
  public void removeEvery(int first, long step, int length) {
    for (long place = first; place < length; place += step) {
      remove((int) place);
    }
  }

  /** Puts a place in. */
  public void add(int place) {
    words[place >> 6] |= 1L << place;
  }

  /** Whether a place is in. */
  public boolean contains(int place) {
    return (words[place >> 6] >>> place & 1) != 0;
  }

  /** How many places are in. */
  public int count() {
    int count = 0;
    for (int k = 0; k < used; k++) {
      count += Long.bitCount(words[k]);
    }
    return count;
  }

  /** The least place in that is not below {@code from}; −1 if there is none. */
  public int next(int from) {
    int k = from >> 6;
    if (k >= used) {
      return -1;
    }
    long word = words[k] & (-1L << from);
    while (word == 0) {
      if (++k >= used) {
        return -1;
      }
      word = words[k];
    }
    return (k << 6) + Long.numberOfTrailingZeros(word);
  }

  /** Becomes a copy. */
  public void set(Survivors other) {
    used = other.used;
    System.arraycopy(other.words, 0, words, 0, used);
  }

  /** Keeps what is also in the other set. */
  public void retain(Survivors other) {
    for (int k = 0; k < used; k++) {
      words[k] &= other.words[k];
    }
  }

  /** Takes out what is in the other set. */
  public void remove(Survivors other) {
    for (int k = 0; k < used; k++) {
      words[k] &= ~other.words[k];
    }
  }

  /** Puts in what is in the other set. */
  public void add(Survivors other) {
    for (int k = 0; k < used; k++) {
      words[k] |= other.words[k];
    }
  }
}
