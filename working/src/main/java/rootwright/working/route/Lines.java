package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/**
 * The lines of a working while it is being written.
 *
 * <p>Nothing is said twice: of neighbouring sides that look the same one is kept, and a line that
 * then has a single side, or stands there already, is left out.
 */
public final class Lines {

  private final Setting setting;
  private final List<Step> steps;

  /** No lines yet; those to come speak of this setting. */
  public Lines(Setting setting) {
    this(setting, new ArrayList<>());
  }

  private Lines(Setting setting, List<Step> steps) {
    this.setting = setting;
    this.steps = steps;
  }

  /** The same sheet, on which the lines written through the result speak of another setting. */
  public Lines in(Setting other) {
    return new Lines(other, steps);
  }

  /** The setting of the lines written here. */
  public Setting setting() {
    return setting;
  }

  /** Writes the line {@code sides[0] = sides[1] = …}. */
  public void add(Idea idea, String reason, Formula... sides) {
    add(idea, reason, List.of(sides));
  }

  /** Writes the line {@code sides[0] = sides[1] = …}. */
  public void add(Idea idea, String reason, List<Formula> sides) {
    List<Formula> kept = new ArrayList<>();
    for (Formula side : sides) {
      Formula normal = NormalForm.of(side);
      if (kept.isEmpty() || !kept.get(kept.size() - 1).equals(normal)) {
        kept.add(normal);
      }
    }
    if (kept.size() < 2) {
      return;
    }
    Step step = Step.equation(setting, idea, reason, kept.toArray(Formula[]::new));
    boolean said =
        steps.stream()
            .anyMatch(
                other -> other.shown().equals(step.shown()) && other.claim().equals(step.claim()));
    if (!said) {
      steps.add(step);
    }
  }

  /** Takes over lines that were written elsewhere. */
  public void addAll(List<Step> others) {
    steps.addAll(others);
  }

  /** Writes the line that the images of a map are the roots of a polynomial. */
  public void addRoots(Idea idea, String reason, Formula shown, Claim.HasRoots claim) {
    steps.add(new Step(shown, reason, idea, claim));
  }

  /** The lines so far. */
  public List<Step> steps() {
    return List.copyOf(steps);
  }
}
