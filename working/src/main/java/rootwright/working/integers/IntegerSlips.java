package rootwright.working.integers;

import java.util.List;
import java.util.function.UnaryOperator;
import rootwright.working.answer.Answer;
import rootwright.working.slip.SlipOn;
import rootwright.working.step.Idea;

/** The slips on integer roots: each is the right count of the wrong cases. Common practice. */
final class IntegerSlips {

  static final List<SlipOn<LetterProblem>> ALL =
      List.of(
          new WrongCases(
              "equal-pair-allowed",
              "Two equal factors give a repeated root, and the roots are to be distinct.",
              15,
              found -> found,
              true),
          new WrongCases(
              "equal-pair-forgotten",
              "Two equal factors are a case too: a repeated root is an integer root.",
              10,
              found ->
                  found.stream()
                      .filter(f -> f.roots().stream().distinct().count() == f.roots().size())
                      .toList(),
              false),
          new WrongCases(
              "negatives-forgotten",
              "Whole numbers have negative divisors as well.",
              15,
              found ->
                  found.stream()
                      .filter(f -> f.roots().stream().allMatch(r -> r.signum() > 0))
                      .toList(),
              false));

  private IntegerSlips() {}

  /**
   * @param change which cases are kept
   * @param withoutDistinct whether “distinct” is overlooked
   */
  private record WrongCases(
      String name,
      String text,
      int weight,
      UnaryOperator<List<Found>> change,
      boolean withoutDistinct)
      implements SlipOn<LetterProblem> {

    @Override
    public Idea spot() {
      return Idea.DIVISORS;
    }

    @Override
    public List<? extends Answer> answers(LetterProblem problem) {
      LetterProblem taken =
          withoutDistinct ? problem.wishing(problem.wish().withoutDistinct()) : problem;
      boolean idle = withoutDistinct && !problem.wish().distinct();
      return idle
          ? List.of()
          : Finiteness.of(taken)
              .map(
                  reason ->
                      List.of(IntegerRoots.answer(problem, change.apply(reason.candidates(taken)))))
              .orElse(List.of());
    }
  }
}
