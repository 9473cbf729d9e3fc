package rootwright.working.proof;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.RationalFunction;

/**
 * What breaks when a condition is dropped: an equation that the fact would give and that is false
 * or has no meaning in one case.
 *
 * @param condition the condition that is dropped
 * @param words what happens, with formulas between backquotes
 * @param broken the equation
 */
public record Boundary(String condition, String words, Identity broken) {

  /** A boundary example about these roots, given as numbers or letters. */
  public static Boundary of(String condition, String words, Letters letters, String equation) {
    return new Boundary(condition, words, Identity.of(letters, equation));
  }

  /** What becomes of the equation. */
  public sealed interface Outcome {
    /** The sides are different: {@code p_2 ≠ e_1^2}. */
    record Different(Formula unequal) implements Outcome {}

    /** One side has no value. */
    record Undefined(Formula claimed, String why) implements Outcome {}

    /** The equation holds all the same, so it shows nothing. */
    record Holds(Formula claimed) implements Outcome {}
  }

  /** Computes both sides exactly. */
  public Outcome outcome() {
    ExpandedEvaluation evaluation = new ExpandedEvaluation(broken);
    List<Formula> sides = broken.sides();
    try {
      RationalFunction first = evaluation.valueOf(sides.get(0));
      RationalFunction last = evaluation.valueOf(sides.get(sides.size() - 1));
      if (evaluation.same(first, last)) {
        return new Outcome.Holds(broken.shown());
      }
      return new Outcome.Different(
          new Formula.Relation(
              List.of(sides.get(0), sides.get(sides.size() - 1)),
              List.of(Formula.Comparison.NOT_EQUAL)));
    } catch (UnsayableException undefined) {
      return new Outcome.Undefined(broken.shown(), undefined.why());
    }
  }
}
