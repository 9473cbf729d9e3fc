package rootwright.working.check.second;

import java.util.List;
import java.util.Map;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.notation.Formula;
import rootwright.working.step.Setting;

/** Formulas in which no root occurs, carried as balls. */
public final class Enclosed {

  private Enclosed() {}

  /**
   * A ball that holds the value of a formula without names.
   *
   * @param digits to work with; the ball is wider by what the operations lose
   * @throws Unbounded if the formula has a part that is not enclosed
   * @throws rootwright.algebra.enclosure.BallContainsZeroException if a denominator cannot be told
   *     from zero
   */
  public static ComplexBall of(Formula formula, int digits) {
    return new BallEvaluation(
            Setting.ofLetters(List.of()), new Labelling(List.of()), Map.of(), digits * 10 / 3 + 32)
        .of(formula);
  }
}
