package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.List;

/** What sums and products ask of their parts. */
final class Parts {

  private Parts() {}

  static List<Formula> appended(List<Formula> parts, Formula last) {
    List<Formula> longer = new ArrayList<>(parts);
    longer.add(last);
    return longer;
  }

  static void requireAtLeastTwo(List<Formula> parts, String what) {
    if (parts.size() < 2) {
      throw new IllegalArgumentException("a %s of %d".formatted(what, parts.size()));
    }
  }
}
