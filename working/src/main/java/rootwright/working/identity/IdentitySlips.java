package rootwright.working.identity;

import java.util.List;
import rootwright.working.answer.Answer;
import rootwright.working.slip.SlipOn;
import rootwright.working.step.Idea;

/** The slips on claims that are to be proved or refuted. */
final class IdentitySlips {

  static final List<SlipOn<Conjecture>> ALL =
      List.of(new ExampleBelieved(), new ConditionForgotten());

  private IdentitySlips() {}

  /** One example for which the claim holds is taken for a proof. Common practice. */
  private static final class ExampleBelieved implements SlipOn<Conjecture> {
    @Override
    public String name() {
      return "example-believed";
    }

    @Override
    public String text() {
      return "An example in which both sides agree proves nothing; try numbers without symmetry.";
    }

    @Override
    public Idea spot() {
      return Idea.CASES;
    }

    @Override
    public int weight() {
      return 15;
    }

    @Override
    public List<? extends Answer> answers(Conjecture conjecture) {
      return Counterexample.agreeing(conjecture).isPresent()
          ? List.of(new Answer.Truth(true))
          : List.of();
    }
  }

  /** The claim is tried on numbers that do not satisfy the condition. Common practice. */
  private static final class ConditionForgotten implements SlipOn<Conjecture> {
    @Override
    public String name() {
      return "condition-forgotten";
    }

    @Override
    public String text() {
      return "The claim is made only for numbers that satisfy the condition.";
    }

    @Override
    public Idea spot() {
      return Idea.ELIMINATE;
    }

    @Override
    public int weight() {
      return 10;
    }

    @Override
    public List<? extends Answer> answers(Conjecture conjecture) {
      boolean needed =
          !conjecture.conditions().isEmpty()
              && conjecture.claims().stream().anyMatch(claim -> !claim.cleared().isZero());
      return needed ? List.of(new Answer.Truth(false)) : List.of();
    }
  }
}
