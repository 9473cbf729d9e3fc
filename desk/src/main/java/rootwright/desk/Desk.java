package rootwright.desk;

import rootwright.algebra.notation.UnreadableException;
import rootwright.working.ask.ProblemReader;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

/** What a coach does at the desk: one method each. Safe to use from several threads. */
public final class Desk {

  private final Kinds kinds = new Kinds();

  /**
   * Reads a problem and finds everything that can be said of it.
   *
   * @throws UnreadableException if the text cannot be read; says where and what to mend
   * @throws rootwright.working.solve.CheckFailedException if a check refutes something of ours
   */
  public Solution work(Statement statement, ClassProfile profile) throws UnreadableException {
    return kinds.solve(ProblemReader.read(statement), profile);
  }
}
