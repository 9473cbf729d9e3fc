package rootwright.composing.blueprint;

import java.util.Optional;
import rootwright.composing.option.Choices;
import rootwright.composing.pattern.AnswerSort;
import rootwright.working.solve.Solution;

/** Who decides whether a worked candidate is offered. */
interface Judge {

  /** The judgement before the options are settled. */
  Judgement of(Solution solution);

  /** Why these options are not wanted; empty if they are. Called when nothing else is wrong. */
  Optional<String> against(Solution solution, Choices choices);

  /** The same judge where statements of a pattern with answers of this sort are worked. */
  default Judge ofStatements(AnswerSort sort) {
    return this;
  }

  /** The judge of a coach's order. */
  static Judge by(Blueprint blueprint) {
    return new Judge() {
      @Override
      public Judge ofStatements(AnswerSort sort) {
        return byPattern(blueprint, sort);
      }

      @Override
      public Judgement of(Solution solution) {
        return Judgement.of(solution, blueprint);
      }

      @Override
      public Optional<String> against(Solution solution, Choices choices) {
        return Judgement.options(solution, choices);
      }
    };
  }

  private static Judge byPattern(Blueprint blueprint, AnswerSort sort) {
    return new Judge() {
      @Override
      public Judgement of(Solution solution) {
        return Judgement.ofStatement(solution, blueprint, sort);
      }

      @Override
      public Optional<String> against(Solution solution, Choices choices) {
        // Fewer options than were wanted are offered with the reason.
        return Optional.empty();
      }
    };
  }
}
