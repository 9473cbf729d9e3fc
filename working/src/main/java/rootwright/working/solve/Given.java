package rootwright.working.solve;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.problem.Problem;

/**
 * What a solution is about, as it is shown: the polynomial, the names, the ask.
 *
 * @param polynomial the polynomial, multiplied out
 * @param stated the polynomial as it was written
 * @param unknown its letter
 * @param roots the names of its roots
 * @param find what is wanted
 * @param reading how doubtful notation was understood
 */
public record Given(
    Formula polynomial,
    Formula stated,
    String unknown,
    List<String> roots,
    Formula find,
    List<String> reading) {

  public Given {
    roots = List.copyOf(roots);
    reading = List.copyOf(reading);
  }

  /** The same with another ask shown. */
  public Given withFind(Formula other) {
    return new Given(polynomial, stated, unknown, roots, other, reading);
  }

  /** The problem again; empty if there are letters among the coefficients. */
  public Optional<Problem> problem() {
    try {
      return Optional.of(
          new Problem(
              FormulaExpansion.polynomial(polynomial, unknown),
              stated,
              unknown,
              roots,
              find,
              reading));
    } catch (UnreadableException letters) {
      return Optional.empty();
    }
  }
}
