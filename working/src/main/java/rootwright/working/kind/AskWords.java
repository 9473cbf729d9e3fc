package rootwright.working.kind;

import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.working.problem.Problem;

/** Asks that begin with a word instead of being an expression. */
final class AskWords {

  private AskWords() {}

  /** Whether the ask is this word alone. */
  static boolean isWord(Problem problem, String word) {
    return problem.ask() instanceof Formula.Application application
        && application.function().equals(word)
        && application.arguments().isEmpty();
  }

  /** What stands in brackets behind this word. */
  static Optional<Formula> argument(Problem problem, String word) {
    return problem.ask() instanceof Formula.Application application
            && application.function().equals(word)
            && application.arguments().size() == 1
        ? Optional.of(application.arguments().get(0))
        : Optional.empty();
  }
}
