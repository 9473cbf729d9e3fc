package rootwright.working.clothing;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.working.step.Step;

/**
 * An equation brought to a polynomial, and which of its roots are solutions.
 *
 * @param polynomial every solution is a root of it
 * @param letter of the polynomial
 * @param lines that lead to it
 * @param kept the roots that are solutions (for powers: that are values of the power), ascending
 * @param rejected the roots that are not, with the reason
 * @param base of the power that was substituted; 1 if the letter is the unknown itself
 */
record Undressed(
    Polynomial polynomial,
    String letter,
    List<Step> lines,
    List<ExactValue> kept,
    List<Rejected> rejected,
    int base) {

  /** A root that is no solution. */
  record Rejected(ExactValue value, String why) {}

  Undressed {
    lines = List.copyOf(lines);
    kept = List.copyOf(kept);
    rejected = List.copyOf(rejected);
  }

  /** The equation as it is shown with 0 on the right. */
  static Formula zero(Formula left) {
    return Formula.equation(left, Formula.number(0));
  }
}
