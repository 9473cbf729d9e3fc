package rootwright.composing.blueprint;

import java.util.Optional;
import rootwright.working.solve.Solution;

/**
 * What came of working a candidate.
 *
 * @param solution everything about it
 * @param failure if there is none: why, a few words
 */
record Worked(Optional<Solution> solution, String failure) {

  static Worked of(Solution solution) {
    return new Worked(Optional.of(solution), "");
  }

  static Worked failed(String why) {
    return new Worked(Optional.empty(), why);
  }
}
