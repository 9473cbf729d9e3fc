package rootwright.press.deliverable;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/**
 * The marks for one line of a working: B1 for what is read off from the statement, M1 for the first
 * line of each idea, A1 where a line ends in a number or the answer. What is read off a polynomial
 * that was first worked out depends on that work, so it is A1 as well.
 *
 * @param step the line
 * @param marks in the order in which they are earned; may be none
 */
record LineMarks(Step step, List<String> marks) {

  LineMarks {
    marks = List.copyOf(marks);
  }

  /** The marks of all lines; the last line always earns one. */
  static List<LineMarks> of(Working working) {
    List<LineMarks> all = new ArrayList<>();
    Set<Idea> seen = EnumSet.noneOf(Idea.class);
    int last = working.steps().size() - 1;
    for (int k = 0; k <= last; k++) {
      Step step = working.steps().get(k);
      List<String> marks = new ArrayList<>();
      if (step.idea() == Idea.READ_COEFFICIENTS && seen.isEmpty()) {
        marks.add("B1");
      } else if (!step.idea().routine() && seen.add(step.idea())) {
        marks.add("M1");
      }
      boolean value = k == last || endsInNumber(step.shown());
      if (value && !marks.contains("B1")) {
        marks.add("A1");
      }
      all.add(new LineMarks(step, marks));
    }
    return all;
  }

  /** What the marks of the shortest route add up to; 1 for an answer without a route. */
  static int total(Solution solution) {
    return solution.routes().isEmpty()
        ? 1
        : of(solution.routes().get(0)).stream().mapToInt(line -> line.marks().size()).sum();
  }

  private static boolean endsInNumber(Formula shown) {
    return shown instanceof Formula.Relation relation
        && relation.sides().get(relation.sides().size() - 1) instanceof Formula.Numeral;
  }
}
