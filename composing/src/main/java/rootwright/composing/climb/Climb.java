package rootwright.composing.climb;

import java.util.List;
import java.util.Optional;

/**
 * Problems from a read-off to a hard one, each adding one idea to those before it.
 *
 * @param steps the problems in order
 * @param missing if there are fewer than {@link #STEPS}: why, one sentence
 */
public record Climb(List<ClimbStep> steps, Optional<String> missing) {

  /** How many problems a climb has. */
  public static final int STEPS = 5;

  /** Keeps its own copy. */
  public Climb {
    steps = List.copyOf(steps);
  }
}
