package rootwright.working.slip;

import java.util.Optional;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.Problem;

/**
 * A repeated root is counted once. Seen with quadratics by Vaiyavutjamai and Clements (from
 * memory).
 */
final class DoubleRootOnce extends Misreading {

  @Override
  public String name() {
    return "double-root-once";
  }

  @Override
  public String text() {
    return "A double root counts twice: every formula for e₁, e₂, … counts roots as often as they occur.";
  }

  @Override
  public int weight() {
    return 10;
  }

  @Override
  Optional<Polynomial> misread(Problem problem) {
    Polynomial distinct = problem.polynomial().squarefreePart();
    return distinct.degree() == problem.degree() ? Optional.empty() : Optional.of(distinct);
  }
}
