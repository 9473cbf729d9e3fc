package rootwright.composing.option;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.check.exact.ExactCheck;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Routes;
import rootwright.working.slip.Slips;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;

/** Problems such as a composer would offer, drawn from a seed. */
final class SampledProblems {

  /** The seed, overridable by the system property {@code rootwright.seed}. */
  static final long SEED = Long.getLong("rootwright.seed", 20_260_117L);

  private static final Set<String> SHORT = Set.of("read-off", "build-from-e", "evaluate");

  private static final List<String> ASKS =
      List.of(
          "Σ r^2",
          "Σ 1/r",
          "Π (1 + r)",
          "Π (2 - r)",
          "Σ r^3",
          "Σ 1/r^2",
          "Σ (r^2 + 4)",
          "Σ 1/(r - 2)",
          "Σ r^2 s");

  /**
   * Three short routes, and the exact check alone: what is sampled here are the wrong options, not
   * the soundness of the answer.
   */
  private static final Kinds KINDS =
      new Kinds(
          Routes.ALL.stream().filter(route -> SHORT.contains(route.name())).toList(),
          Slips.ALL,
          new TwoChecks(new ExactCheck(), new ExactCheck()));

  private SampledProblems() {}

  /** So many solved problems with one number for an answer, no coefficient zero. */
  static List<Solution> of(int howMany) throws UnreadableException {
    SplittableRandom random = new SplittableRandom(SEED);
    List<Solution> found = new ArrayList<>();
    while (found.size() < howMany) {
      String ask = ASKS.get(random.nextInt(ASKS.size()));
      StringBuilder coefficients = new StringBuilder();
      coefficients.append(1 + random.nextInt(3));
      for (int k = 0; k < 3; k++) {
        int size = 1 + random.nextInt(9);
        coefficients.append(' ').append(random.nextBoolean() ? size : -size);
      }
      Solution solution =
          KINDS.solve(
              ProblemReader.read(Statement.of(coefficients.toString(), ask)),
              ClassProfile.EVERYTHING);
      if (solution.answer() instanceof Answer.Exact) {
        found.add(solution);
      }
    }
    return found;
  }
}
