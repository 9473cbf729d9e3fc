package rootwright.working.values;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.value.ExactValue;
import rootwright.working.step.Step;

/**
 * Between what an expression lies.
 *
 * @param low the least value, attained; absent if there is none or it is not known
 * @param high the greatest value, attained
 * @param route the name of the working
 * @param title what is done
 * @param teaches what a student learns from it
 * @param steps its lines, the equality cases last
 * @param second how it was confirmed another way
 */
record Bound(
    Optional<ExactValue> low,
    Optional<ExactValue> high,
    String route,
    String title,
    String teaches,
    List<Step> steps,
    String second) {
  Bound {
    steps = List.copyOf(steps);
  }
}
