package rootwright.composing.climb;

import java.util.List;
import rootwright.composing.blueprint.Composed;
import rootwright.working.step.Idea;

/**
 * One problem of a climb.
 *
 * @param composed the problem
 * @param ideas the ideas beyond reading off that its shortest working needs
 * @param adds those of them that no problem before it needed
 */
public record ClimbStep(Composed composed, List<Idea> ideas, List<Idea> adds) {

  /** Keeps its own copies. */
  public ClimbStep {
    ideas = List.copyOf(ideas);
    adds = List.copyOf(adds);
  }
}
