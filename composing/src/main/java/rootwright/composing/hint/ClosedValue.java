package rootwright.composing.hint;

import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/** The rational value of a formula without letters, such as 3² − 2(1/2). */
final class ClosedValue {

  /** No formula has this for a name, so nothing but numbers is understood. */
  private static final String NO_NAME = "";

  private ClosedValue() {}

  /** The value; empty if there are letters, roots or words in the formula. */
  static Optional<Rational> of(Formula formula) {
    if (formula.contains(part -> part instanceof Formula.Name)) {
      return Optional.empty();
    }
    try {
      Polynomial value = FormulaExpansion.polynomial(formula, NO_NAME);
      return value.degree() <= 0 ? Optional.of(value.coefficient(0)) : Optional.empty();
    } catch (UnreadableException open) {
      return Optional.empty();
    }
  }
}
