package rootwright.composing.blueprint;

import java.util.List;
import rootwright.composing.option.Choices;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Solution;

/**
 * A composed problem that passed everything.
 *
 * @param statement the problem as it would be typed
 * @param solution everything about it, checked twice
 * @param choices its options, the place of the key balanced over the composition
 * @param good why it is worth setting, one short reason each
 * @param conditions what its statement has to say, or need not say, and why
 * @param remarks what it has in common with problems picked before it, such as shifted roots
 */
public record Composed(
    Statement statement,
    Solution solution,
    Choices choices,
    List<String> good,
    List<Condition> conditions,
    List<String> remarks) {

  /** Keeps its own copies. */
  public Composed {
    good = List.copyOf(good);
    conditions = List.copyOf(conditions);
    remarks = List.copyOf(remarks);
  }
}
