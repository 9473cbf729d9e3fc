package rootwright.composing.blueprint;

import java.util.Optional;
import rootwright.working.problem.Statement;

/** Draws statements: the same seed draws the same. Safe to use from several threads. */
@FunctionalInterface
interface StatementSource {

  /** A statement, or empty if the numbers drawn do not make one that is wanted. */
  Optional<Statement> at(long seed);
}
