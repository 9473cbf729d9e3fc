package rootwright.working.solve;

import java.util.ArrayList;
import java.util.List;
import rootwright.working.gate.Warning;
import rootwright.working.route.Working;
import rootwright.working.step.Step;

/**
 * Lines by which a polynomial was found from something else, to stand in front of every route that
 * works with it.
 *
 * @param steps the lines in order, every one that is no argument confirmed
 */
public record Derivation(List<Step> steps) {

  public Derivation {
    steps = List.copyOf(steps);
  }

  /**
   * Puts the lines before both checks.
   *
   * @throws CheckFailedException if one of the checks refutes a line, or cannot say
   */
  public static Derivation confirmed(String place, List<Step> steps, TwoChecks checks) {
    for (int k = 0; k < steps.size(); k++) {
      Step step = steps.get(k);
      String line = "%s, line %d".formatted(place, k + 1);
      if (!step.isArgument() && checks.confirm(line, step.shown(), step.claim()).isEmpty()) {
        throw new CheckFailedException(line, step.shown(), "a check could not confirm it");
      }
    }
    return new Derivation(steps);
  }

  /**
   * A solution found for the polynomial, as the solution of the problem it came from.
   *
   * @param given what was given and asked in truth
   * @param statement the problem in words
   * @param warnings what the coach should know besides, to stand first
   */
  public Solution before(Solution found, Given given, String statement, List<Warning> warnings) {
    List<Warning> all = new ArrayList<>(warnings);
    all.addAll(found.warnings());
    return found
        .restated(given, statement)
        .withWarnings(all)
        .withRoutes(found.routes().stream().map(this::before).toList());
  }

  /** A working with these lines in front. */
  public Working before(Working working) {
    List<Step> all = new ArrayList<>(steps);
    all.addAll(working.steps());
    return working.withSteps(all);
  }
}
