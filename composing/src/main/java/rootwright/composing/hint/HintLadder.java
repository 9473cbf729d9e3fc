package rootwright.composing.hint;

import java.util.List;
import java.util.Optional;
import rootwright.working.solve.Solution;

/**
 * Five hints, each nearer to the solution: a question to orient; the idea named, without numbers;
 * the first transformed line in letters; the first line with numbers; all but the last operation.
 *
 * <p>What holds for every ladder: no hint has the answer or its negative in it, in whatever form,
 * exponents and indices aside; no hint ends a line in a wrong option; no hint shows more than one
 * line of the working. A hint that would break a rule is said in words instead.
 *
 * @param rungs the five hints
 */
public record HintLadder(List<Rung> rungs) {

  /** How many hints there are. */
  public static final int RUNGS = 5;

  /**
   * Checks the number of hints.
   *
   * @throws IllegalArgumentException if it is not five
   */
  public HintLadder {
    rungs = List.copyOf(rungs);
    if (rungs.size() != RUNGS) {
      throw new IllegalArgumentException("a ladder of %d hints".formatted(rungs.size()));
    }
  }

  /** The ladder from the shortest working; empty if there is no working. */
  public static Optional<HintLadder> of(Solution solution) {
    return solution.routes().stream()
        .findFirst()
        .map(shortest -> new LadderBuilder(shortest, Secret.of(solution)).build());
  }
}
