package rootwright.algebra.notation;

import java.util.Collection;

/** The known word that was probably meant. */
final class Nearest {

  private static final int FARTHEST = 2;
  private static final int SHORTEST = 4;

  private Nearest() {}

  /**
   * The nearest word, at most two letters away and no more than a third of the word; the first such
   * in the order of the collection; empty if there is none.
   */
  static String of(String word, Collection<String> known) {
    String best = "";
    int least = Math.min(FARTHEST, word.length() / 3) + 1;
    for (String candidate : known) {
      if (candidate.length() >= SHORTEST && Math.abs(candidate.length() - word.length()) < least) {
        int distance = distance(candidate, word);
        if (distance < least) {
          least = distance;
          best = candidate;
        }
      }
    }
    return best;
  }

  /** How many letters must be put in, left out or changed (Levenshtein 1966). */
  private static int distance(String left, String right) {
    int[] above = new int[right.length() + 1];
    for (int k = 0; k < above.length; k++) {
      above[k] = k;
    }
    for (int row = 1; row <= left.length(); row++) {
      int[] here = new int[above.length];
      here[0] = row;
      for (int k = 1; k < here.length; k++) {
        int changed = above[k - 1] + (left.charAt(row - 1) == right.charAt(k - 1) ? 0 : 1);
        here[k] = Math.min(changed, Math.min(above[k], here[k - 1]) + 1);
      }
      above = here;
    }
    return above[right.length()];
  }
}
