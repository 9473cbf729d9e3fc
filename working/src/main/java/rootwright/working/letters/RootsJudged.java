package rootwright.working.letters;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.value.ExactValue;

/** Whether the roots at one value of the letter are as the conditions say. */
final class RootsJudged {

  private RootsJudged() {}

  /**
   * What is wrong with the roots, if anything.
   *
   * @param roots the distinct roots
   * @param here the value of the letter as a clause
   */
  static Optional<String> objection(LetteredProblem problem, List<ExactValue> roots, String here) {
    int degree = problem.polynomial().degree();
    long real = roots.stream().filter(ExactValue::isReal).count();
    for (Condition.AllRoots condition : problem.conditions(Condition.AllRoots.class)) {
      if (condition.nature() == RootNature.DISTINCT && roots.size() < degree) {
        return Optional.of("for %s a root is repeated".formatted(here));
      }
      Optional<ExactValue> bad =
          roots.stream().filter(root -> !condition.nature().holdsFor(root)).findFirst();
      if (bad.isPresent()) {
        return Optional.of(
            real < roots.size()
                ? real == 0
                    ? "for %s no root is real".formatted(here)
                    : "for %s %d of %d distinct roots are not real"
                        .formatted(here, roots.size() - real, roots.size())
                : "for %s %s is a root".formatted(here, LetterSolution.text(bad.get())));
      }
    }
    for (Condition.RealCount count : problem.conditions(Condition.RealCount.class)) {
      if (real != count.count()) {
        return Optional.of("for %s there are %d distinct real roots".formatted(here, real));
      }
    }
    for (Condition.Placed placed : problem.conditions(Condition.Placed.class)) {
      if (!placed.holdsFor(roots)) {
        return Optional.of("for %s it is not so that %s".formatted(here, placed.words()));
      }
    }
    return Optional.empty();
  }
}
