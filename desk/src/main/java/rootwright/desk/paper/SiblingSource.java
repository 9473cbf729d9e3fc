package rootwright.desk.paper;

import rootwright.algebra.notation.UnreadableException;
import rootwright.composing.blueprint.Composition;
import rootwright.working.problem.Statement;

/** Finds siblings of a problem, as many as asked for or fewer. */
@FunctionalInterface
public interface SiblingSource {

  /**
   * The siblings.
   *
   * @throws UnreadableException if the statement cannot be read
   * @throws rootwright.composing.blueprint.ContradictoryBlueprintException if such a problem has
   *     none
   */
  Composition siblings(Statement statement, int many, long seed) throws UnreadableException;
}
