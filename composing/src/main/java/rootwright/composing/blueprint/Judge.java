package rootwright.composing.blueprint;

import java.util.Optional;
import rootwright.composing.option.Choices;
import rootwright.working.solve.Solution;

/** Who decides whether a worked candidate is offered. */
interface Judge {

  /** The judgement before the options are settled. */
  Judgement of(Solution solution);

  /** Why these options are not wanted; empty if they are. Called when nothing else is wrong. */
  Optional<String> against(Solution solution, Choices choices);

  /** The judge of a coach's order. */
  static Judge by(Blueprint blueprint) {
    return new Judge() {
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
}
