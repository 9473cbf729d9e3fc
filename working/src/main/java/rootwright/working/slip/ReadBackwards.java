package rootwright.working.slip;

import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.Problem;

/** A polynomial written with its powers ascending is read as if they descended. Common practice. */
final class ReadBackwards extends Misreading {

  @Override
  public String name() {
    return "read-backwards";
  }

  @Override
  public String text() {
    return "Look at the powers, not at the order of writing: the lead belongs to the highest power.";
  }

  @Override
  public int weight() {
    return 5;
  }

  @Override
  Optional<Polynomial> misread(Problem problem) {
    boolean ascending =
        problem.stated() instanceof Formula.Sum sum && degree(sum.terms().get(0), problem) == 0;
    return ascending && !problem.polynomial().coefficient(0).isZero()
        ? Optional.of(problem.polynomial().reversed())
        : Optional.empty();
  }

  private static int degree(Formula term, Problem problem) {
    return term.contains(
            part -> part instanceof Formula.Name name && name.spelling().equals(problem.unknown()))
        ? 1
        : 0;
  }
}
