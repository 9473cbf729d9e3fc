package rootwright.lesson.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * A row that is set.
 *
 * @param placed what stands in it
 * @param width of everything
 * @param ascent above the baseline
 * @param descent below it
 */
record Row(List<Placed> placed, double width, double ascent, double descent) {

  /** What stands at which distance from the left end of its row. */
  record Placed(Atom atom, double x) {}

  Row {
    placed = List.copyOf(placed);
  }

  /** Fills rows of this width, each as full as it gets; the rest of a paragraph is indented. */
  static List<Row> filled(List<? extends Atom> atoms, double width, double indent) {
    List<Row> rows = new ArrayList<>();
    List<Placed> open = new ArrayList<>();
    double x = 0;
    for (int from = 0; from < atoms.size(); ) {
      int to = from + 1;
      while (to < atoms.size() && !atoms.get(to).mayBreak()) {
        to++;
      }
      double group = width(atoms.subList(from, to), open.isEmpty());
      if (!open.isEmpty() && x + group > width) {
        rows.add(closed(open));
        open = new ArrayList<>();
        x = indent;
      }
      for (Atom atom : atoms.subList(from, to)) {
        x += open.isEmpty() ? 0 : atom.room();
        open.add(new Placed(atom, x));
        x += atom.width();
      }
      from = to;
    }
    if (!open.isEmpty()) {
      rows.add(closed(open));
    }
    return rows;
  }

  private static double width(List<? extends Atom> atoms, boolean first) {
    double width = 0;
    for (int k = 0; k < atoms.size(); k++) {
      width += (first && k == 0 ? 0 : atoms.get(k).room()) + atoms.get(k).width();
    }
    return width;
  }

  private static Row closed(List<Placed> placed) {
    Placed last = placed.get(placed.size() - 1);
    return new Row(
        placed,
        last.x() + last.atom().width(),
        placed.stream().mapToDouble(each -> each.atom().ascent()).max().orElse(0),
        placed.stream().mapToDouble(each -> each.atom().descent()).max().orElse(0));
  }
}
