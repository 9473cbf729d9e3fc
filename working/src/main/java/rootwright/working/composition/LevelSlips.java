package rootwright.working.composition;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.solve.Solution;
import rootwright.working.step.Idea;

/** Wrong turnings on the way to the roots of P(P(x)) = c. */
final class LevelSlips {

  private LevelSlips() {}

  /** Those whose value differs from the answer. */
  static List<Solution.WrongTurning> of(Composed composed, Answer answer) {
    Polynomial whole = composed.whole();
    Polynomial inner = composed.inner();
    List<Solution.WrongTurning> slips = new ArrayList<>();
    slips.add(
        Solution.WrongTurning.number(
            "one-level",
            "Every level P(x) = r has %d roots of its own, and there are %d levels."
                .formatted(inner.degree(), inner.degree()),
            composed.total(composed.levels()),
            Idea.CASES,
            30));
    slips.add(
        Solution.WrongTurning.number(
            "repeated-once",
            "A repeated root is counted as often as it occurs.",
            composed.total(whole.squarefreePart()),
            Idea.READ_COEFFICIENTS,
            15));
    if (composed.ask().total() == LevelAsk.Total.SUM) {
      slips.add(
          Solution.WrongTurning.number(
              "sign-of-the-sum",
              "The sum of the roots is minus the second coefficient over the first.",
              composed.total(whole).negate(),
              Idea.READ_COEFFICIENTS,
              25));
    } else {
      slips.add(
          Solution.WrongTurning.number(
              "level-forgotten",
              "The constant on the right belongs to the last coefficient.",
              composed.total(inner.compose(inner)),
              Idea.EVALUATE,
              25));
      slips.add(
          Solution.WrongTurning.number(
              "lead-not-divided",
              "The last coefficient is divided by the first.",
              composed.total(whole).times(whole.lead()),
              Idea.READ_COEFFICIENTS,
              20));
    }
    slips.removeIf(slip -> slip.value().equals(answer));
    return slips;
  }
}
