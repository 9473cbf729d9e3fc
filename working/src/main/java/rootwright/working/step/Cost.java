package rootwright.working.step;

import java.math.BigDecimal;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;

/**
 * What a working costs a student: lines, ideas that are not routine, and the size of the numbers.
 *
 * <p>The weights are a judgement of practice, not a measurement: one a line, half an idea, a tenth
 * a bit of every number written.
 *
 * @param unwritten lines that a student has to write although one line here stands for them
 */
public record Cost(int lines, int ideas, int bits, int unwritten) implements Comparable<Cost> {

  /**
   * A product over all namings of the roots, multiplied out and put into the letters in one line,
   * stands for a page of work that no student does by choice.
   */
  private static final int PRODUCT_OVER_NAMINGS = 8;

  /** The cost of these lines. */
  public static Cost of(List<Step> steps) {
    int ideas =
        (int) steps.stream().map(Step::idea).filter(idea -> !idea.routine()).distinct().count();
    int products = (int) steps.stream().filter(Cost::isProductOverNamings).count();
    int bits = steps.stream().mapToInt(step -> bits(step.shown())).sum();
    return new Cost(steps.size(), ideas, bits, products * PRODUCT_OVER_NAMINGS);
  }

  /** All lines, written or not, + ideas/2 + bits/10, exact in tenths. */
  public BigDecimal total() {
    return BigDecimal.valueOf(10L * (lines + unwritten) + 5L * ideas + bits, 1);
  }

  @Override
  public int compareTo(Cost other) {
    return total().compareTo(other.total());
  }

  private static boolean isProductOverNamings(Step step) {
    return step.idea() == Idea.ELIMINATE
        && step.shown() instanceof Formula.Relation relation
        && relation.sides().get(0) instanceof Formula.Aggregate aggregate
        && aggregate.operation() == Formula.Aggregate.Operation.PRODUCT;
  }

  private static int bits(Formula formula) {
    if (formula instanceof Formula.Numeral numeral) {
      Rational value = numeral.value();
      return value.numerator().bitLength()
          + (value.isInteger() ? 0 : value.denominator().bitLength());
    }
    return formula.parts().stream().mapToInt(Cost::bits).sum();
  }
}
