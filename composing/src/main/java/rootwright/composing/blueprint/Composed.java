package rootwright.composing.blueprint;

import java.util.List;
import rootwright.working.problem.Problem;
import rootwright.working.solve.Solution;

/**
 * A composed problem that passed everything.
 *
 * @param problem what is given and asked
 * @param solution everything about it, checked twice
 * @param good why it is worth setting, one short reason each
 */
public record Composed(Problem problem, Solution solution, List<String> good) {
  public Composed {
    good = List.copyOf(good);
  }
}
