package rootwright.working.letters;

import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;

/** Whether a comparison of functions of one letter holds at a number. */
final class BoundAt {

  private static final ExactValue ZERO = new RationalValue(Rational.ZERO);

  private BoundAt() {}

  /** Whether every comparison of the chain holds; an order holds between real numbers only. */
  static boolean holds(Formula.Relation relation, String letter, ExactValue value) {
    List<Formula> sides = relation.sides();
    for (int k = 1; k < sides.size(); k++) {
      Polynomial difference = difference(sides.get(k - 1).minus(sides.get(k)), letter);
      ExactValue sign =
          NumberAt.value(difference, value)
              .orElseThrow(
                  () ->
                      new BeyondLettersException(
                          "a comparison is worked at rational and quadratic values only"));
      if (!holds(relation.comparisons().get(k - 1), sign)) {
        return false;
      }
    }
    return true;
  }

  private static boolean holds(Formula.Comparison comparison, ExactValue difference) {
    boolean zero = difference.equals(ZERO);
    if (comparison == Formula.Comparison.EQUAL) {
      return zero;
    } else if (comparison == Formula.Comparison.NOT_EQUAL) {
      return !zero;
    } else if (!difference.isReal()) {
      return false;
    }
    int sign = ExactValues.compareReal(difference, ZERO);
    return switch (comparison) {
      case LESS -> sign < 0;
      case AT_MOST -> sign <= 0;
      case GREATER -> sign > 0;
      case AT_LEAST -> sign >= 0;
      default -> throw new BeyondLettersException("a congruence is no condition on a letter here");
    };
  }

  /** The difference of the sides, whose denominator must be a number. */
  static Polynomial difference(Formula difference, String letter) {
    try {
      RationalFunction function = FormulaExpansion.expand(difference, Map.of(letter, 1));
      if (!function.isPolynomial()) {
        throw new BeyondLettersException("a letter stands in a denominator of a comparison");
      }
      return InLetters.inOne(function.numerator(), 1);
    } catch (UnreadableException unread) {
      throw new BeyondLettersException(
          "a comparison is of one letter and numbers: " + unread.getMessage());
    }
  }
}
