package rootwright.working.solve;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.problem.Problem;

/**
 * What a solution is about, as it is shown: the polynomial, the names, the ask.
 *
 * @param polynomial the polynomial, multiplied out; for a problem without one, what stands in its
 *     place
 * @param stated the polynomial as it was written
 * @param unknown its letter
 * @param roots the names of its roots
 * @param find what is wanted
 * @param conditions what is given besides, such as r = 2s or words
 * @param reading how doubtful notation was understood
 */
public record Given(
    Formula polynomial,
    Formula stated,
    String unknown,
    List<String> roots,
    Formula find,
    List<Formula> conditions,
    List<String> reading) {

  public Given {
    conditions = List.copyOf(conditions);
    roots = List.copyOf(roots);
    reading = List.copyOf(reading);
  }

  /** The same with another ask shown. */
  public Given withFind(Formula other) {
    return new Given(polynomial, stated, unknown, roots, other, conditions, reading);
  }

  /** A problem as it is shown. */
  public static Given of(Problem problem) {
    return new Given(
        PolynomialFormula.of(problem.polynomial(), problem.unknown()),
        problem.stated(),
        problem.unknown(),
        problem.roots(),
        problem.ask(),
        List.of(),
        problem.reading());
  }

  /**
   * The problem again, if it is about the roots of one polynomial with numbers for coefficients and
   * nothing else is given.
   */
  public Optional<Problem> problem() {
    if (!conditions.isEmpty()) {
      return Optional.empty();
    }
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
