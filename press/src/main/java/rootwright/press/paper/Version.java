package rootwright.press.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * One version of a paper.
 *
 * @param mark what tells it from the others ({@code A}), empty if it is the only one
 * @param items in their order
 */
public record Version(String mark, List<PaperItem> items) {

  public Version {
    items = List.copyOf(items);
  }

  /** The same with another item at a place from 0. */
  public Version withItem(int place, PaperItem item) {
    List<PaperItem> other = new ArrayList<>(items);
    other.set(place, item);
    return new Version(mark, other);
  }
}
