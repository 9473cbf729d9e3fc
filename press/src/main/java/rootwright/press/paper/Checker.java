package rootwright.press.paper;

import rootwright.algebra.notation.UnreadableException;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Solution;

/** Reads a statement anew and finds its answer, confirmed by both checks. */
@FunctionalInterface
public interface Checker {

  /**
   * Everything found.
   *
   * @throws UnreadableException if the statement cannot be read
   * @throws rootwright.working.solve.CheckFailedException if a check refutes something
   */
  Solution read(Statement statement) throws UnreadableException;
}
