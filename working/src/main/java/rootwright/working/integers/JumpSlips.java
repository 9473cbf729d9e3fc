package rootwright.working.integers;

import java.math.BigInteger;
import java.util.List;
import java.util.SortedMap;
import java.util.function.Predicate;
import rootwright.working.answer.Answer;
import rootwright.working.slip.SlipOn;
import rootwright.working.step.Idea;

/** The slips on a descent: one of its last cases is forgotten. Common practice. */
final class JumpSlips {

  static final List<SlipOn<JumpProblem>> ALL =
      List.of(
          new CaseForgotten(
              "only-equal-pair",
              "The smallest solution need not have equal numbers: look at unequal ones as well.",
              15,
              pair -> pair.get(0).equals(pair.get(1))),
          new CaseForgotten(
              "equal-pair-forgotten",
              "The smallest solution may have equal numbers.",
              10,
              pair -> !pair.get(0).equals(pair.get(1))));

  private JumpSlips() {}

  private record CaseForgotten(String name, String text, int weight, Predicate<List<Long>> kept)
      implements SlipOn<JumpProblem> {

    @Override
    public Idea spot() {
      return Idea.CASES;
    }

    @Override
    public List<? extends Answer> answers(JumpProblem problem) {
      SortedMap<BigInteger, List<Long>> left = VietaJumping.quotients(problem);
      left.values().removeIf(kept.negate());
      return left.isEmpty() ? List.of() : List.of(VietaJumping.answer(problem, left));
    }
  }
}
