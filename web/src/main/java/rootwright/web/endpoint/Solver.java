package rootwright.web.endpoint;

import rootwright.algebra.notation.UnreadableException;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

/** Who works problems. */
@FunctionalInterface
public interface Solver {

  /**
   * Finds everything that can be said of a statement; ends early when its thread is interrupted.
   *
   * @throws UnreadableException if the statement cannot be read
   * @throws InterruptedException if it ended early
   */
  Solution work(Statement statement, ClassProfile profile)
      throws UnreadableException, InterruptedException;
}
