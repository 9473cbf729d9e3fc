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
 */
public record Cost(int lines, int ideas, int bits) implements Comparable<Cost> {

  /** The cost of these lines. */
  public static Cost of(List<Step> steps) {
    int ideas =
        (int) steps.stream().map(Step::idea).filter(idea -> !idea.routine()).distinct().count();
    int bits = steps.stream().mapToInt(step -> bits(step.shown())).sum();
    return new Cost(steps.size(), ideas, bits);
  }

  /** lines + ideas/2 + bits/10, exact in tenths. */
  public BigDecimal total() {
    return BigDecimal.valueOf(10L * lines + 5L * ideas + bits, 1);
  }

  @Override
  public int compareTo(Cost other) {
    return total().compareTo(other.total());
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
