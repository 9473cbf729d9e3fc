package rootwright.working.route;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.working.answer.Answer;
import rootwright.working.step.Step;

/** What comes of trying a {@link Route} on an ask. */
public sealed interface Attempt {

  /**
   * The route goes through.
   *
   * @param title what is done here, possibly more exact than the route's own title
   * @param steps the lines, in order; at least one
   * @param answer where the last line ends
   * @param conditions what the lines needed and was found true, one sentence each
   */
  record Worked(String title, List<Step> steps, Answer answer, List<String> conditions)
      implements Attempt {
    public Worked {
      steps = List.copyOf(steps);
      conditions = List.copyOf(conditions);
      if (steps.isEmpty()) {
        throw new IllegalArgumentException("a working without lines: " + title);
      }
    }

    /** A working that ends in a rational number and needed no condition. */
    public static Worked of(String title, List<Step> steps, Rational value) {
      return new Worked(title, steps, Answer.exact(value), List.of());
    }
  }

  /**
   * The route does not apply, or would be foolish here.
   *
   * @param why one sentence or phrase for a coach: "there is no rational root"
   */
  record Declined(String why) implements Attempt {}
}
