package rootwright.working.letters;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.RationalFunction;

/**
 * An expression that is a function of the letters.
 *
 * @param problem the problem
 * @param expression the expression
 * @param value what it is equal to
 */
record FunctionAsked(LetteredProblem problem, Formula expression, RationalFunction value) {

  /** The value as it is written. */
  Formula written() {
    return InLetters.formula(value, problem.polynomial().letters());
  }

  /** The same expression of the roots of another polynomial; null-free: empty if there is none. */
  static Optional<RationalFunction> valueOf(
      Formula expression, LetteredPolynomial polynomial, List<String> names) {
    if (polynomial.degree() != names.size()) {
      return Optional.empty();
    }
    LetteredRoots roots = new LetteredRoots(polynomial);
    return roots
        .constant(
            new LetteredEvaluation(roots, names, polynomial.letters(), polynomial).of(expression))
        .map(roots::outer);
  }
}
