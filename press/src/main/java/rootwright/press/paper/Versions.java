package rootwright.press.paper;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;

/** Makes versions of a paper. */
public final class Versions {

  private static final int MOST = 999;

  private Versions() {}

  /**
   * Versions with the same items in other orders; the first keeps the order. The same seed gives
   * the same orders.
   *
   * @param count from 1 to 999; more than 26 versions are numbered instead of lettered
   * @throws IllegalArgumentException if the count is outside that range
   */
  public static List<Version> reordered(List<PaperItem> items, int count, long seed) {
    if (count < 1 || count > MOST) {
      throw new IllegalArgumentException(
          "%d versions; there are marks for %d".formatted(count, MOST));
    }
    SplittableRandom random = new SplittableRandom(seed);
    List<Version> versions = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      List<PaperItem> order = new ArrayList<>(items);
      if (k > 0) {
        for (int last = order.size() - 1; last > 0; last--) {
          Collections.swap(order, last, random.nextInt(last + 1));
        }
      }
      versions.add(new Version(mark(k, count), order));
    }
    return versions;
  }

  /**
   * Versions with siblings: the k-th version takes the k-th sibling at every place.
   *
   * @param siblings at each place the items of all versions, equally many, at most 999
   * @throws IllegalArgumentException if a place has another number of siblings than the first
   */
  public static List<Version> renumbered(List<List<PaperItem>> siblings) {
    int count = siblings.isEmpty() ? 1 : siblings.get(0).size();
    List<Version> versions = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      List<PaperItem> items = new ArrayList<>();
      for (List<PaperItem> place : siblings) {
        if (place.size() != count) {
          throw new IllegalArgumentException(
              "%d siblings at one place and %d at another".formatted(count, place.size()));
        }
        items.add(place.get(k));
      }
      versions.add(new Version(mark(k, count), items));
    }
    return versions;
  }

  private static String mark(int k, int count) {
    return count <= 26 ? String.valueOf((char) ('A' + k)) : "%03d".formatted(k + 1);
  }
}
