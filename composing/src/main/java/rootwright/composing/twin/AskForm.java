package rootwright.composing.twin;

import java.util.Optional;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.Asked;
import rootwright.working.ask.AskedReader;
import rootwright.working.problem.Problem;

/**
 * An ask as a function of the roots, whatever it was written like, and what it becomes when the
 * roots are mirrored or inverted. Equal texts are equal functions up to renaming the roots.
 */
sealed interface AskForm permits SymmetricAsk, ExpressionAsk, WordAsk {

  /** The function, the same text for the same function. */
  String text();

  /** E(−r, −s, …) for E(r, s, …); empty if the ask is not a function of the roots alone. */
  Optional<AskForm> mirrored();

  /** E(1/r, 1/s, …) for E(r, s, …); empty if the ask is not a function of the roots alone. */
  Optional<AskForm> inverted();

  /** Reads the ask of a problem. */
  static AskForm of(Problem problem) {
    if (problem.degree() < 1) {
      return new WordAsk(PlainWriter.write(problem.ask()));
    }
    Asked asked = AskedReader.read(problem);
    int n = problem.degree();
    return asked
        .quotient()
        .<AskForm>map(quotient -> SymmetricAsk.of(n, quotient))
        .or(() -> asked.expression().map(written -> ExpressionAsk.of(n, written)))
        .orElseGet(() -> new WordAsk(PlainWriter.write(problem.ask())));
  }

  /** Whether the value asked for depends on the roots alone, not on a factor of the polynomial. */
  default boolean isInRootsAlone() {
    return mirrored().isPresent();
  }

  /** The polynomial up to a constant: primitive over the integers with positive lead. */
  static Polynomial scaled(Polynomial polynomial) {
    return polynomial.isZero() ? polynomial : polynomial.primitive();
  }
}
