package rootwright.working.moduli;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.value.ExactValue;
import rootwright.working.solve.Solution;
import rootwright.working.step.Step;

/**
 * What is found about an ask.
 *
 * @param value the value; absent if there is none that the polynomial fixes, or none that is worked
 * @param why why not, if there is none
 * @param ways the ways to the value
 * @param slips wrong turnings
 */
record Found(
    Optional<ExactValue> value, String why, List<Way> ways, List<Solution.WrongTurning> slips) {

  Found {
    ways = List.copyOf(ways);
    slips = List.copyOf(slips);
  }

  /** A way to the value, before its lines are checked. */
  record Way(String name, String title, String teaches, List<Step> steps) {
    Way {
      steps = List.copyOf(steps);
    }
  }

  static Found none(String why) {
    return new Found(Optional.empty(), why, List.of(), List.of());
  }
}
