package rootwright.working.step;

import java.util.List;
import rootwright.algebra.notation.Formula;

/**
 * One line of a working. What a student reads and what is checked are the same object.
 *
 * @param shown the line as it is written
 * @param reason why it holds, a few words for the end of the line
 * @param idea the thought behind it
 * @param claim what must be confirmed by both checks before the line is shown
 */
public record Step(Formula shown, String reason, Idea idea, Claim claim) {

  /** The line {@code sides[0] = sides[1] = …}, claimed in a setting. */
  public static Step equation(Setting setting, Idea idea, String reason, Formula... sides) {
    return new Step(
        Formula.equation(sides), reason, idea, new Claim.Equal(setting, List.of(sides)));
  }

  /** A line that no computation confirms. */
  public static Step argument(Idea idea, String reason, Formula shown) {
    return new Step(shown, reason, idea, new Claim.Argument());
  }

  /** Whether the line is an argument in words rather than a computation. */
  public boolean isArgument() {
    return claim instanceof Claim.Argument;
  }
}
