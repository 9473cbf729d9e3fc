package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.LetteredSetting;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** The lines of a working about letters while it is being written. */
final class LetterLines {

  private final List<Step> steps = new ArrayList<>();

  /** Writes {@code sides[0] = sides[1] = …}, which holds for all letters. */
  void add(LetteredSetting setting, Idea idea, String reason, Formula... sides) {
    List<Formula> kept = kept(sides);
    if (kept.size() > 1) {
      write(
          new Step(
              Formula.equation(kept.toArray(Formula[]::new)),
              reason,
              idea,
              new Claim.EqualWithLetters(setting, kept)));
    }
  }

  /** Writes {@code sides[0] = sides[1] = …}, in which no root with letters occurs. */
  void add(Setting setting, Idea idea, String reason, Formula... sides) {
    List<Formula> kept = kept(sides);
    if (kept.size() > 1) {
      write(Step.equation(setting, idea, reason, kept.toArray(Formula[]::new)));
    }
  }

  /** Writes which values of a letter solve an equation. */
  void solutions(
      Idea idea, String reason, String letter, Polynomial equation, List<ExactValue> values) {
    write(
        new Step(
            values(letter, values),
            reason,
            idea,
            new Claim.SolutionSet(equation, NumberDomain.COMPLEX, values)));
  }

  /** Writes a line with a claim of its own. */
  void write(Step step) {
    boolean said =
        steps.stream()
            .anyMatch(
                other -> other.shown().equals(step.shown()) && other.claim().equals(step.claim()));
    if (!said) {
      steps.add(step);
    }
  }

  /** Writes a thought that no computation confirms. */
  void argue(Idea idea, String reason, Formula shown) {
    write(Step.argument(idea, reason, shown));
  }

  List<Step> steps() {
    return List.copyOf(steps);
  }

  /** {@code k = 26, k = -34}; in words if there is none. */
  static Formula values(String letter, List<ExactValue> values) {
    if (values.isEmpty()) {
      return new Formula.Words("no value of " + letter);
    }
    List<Formula> each =
        values.stream()
            .map(value -> Formula.equation(Formula.name(letter), value.toFormula()))
            .toList();
    return each.size() == 1 ? each.get(0) : new Formula.Listing(each);
  }

  private static List<Formula> kept(Formula... sides) {
    List<Formula> kept = new ArrayList<>();
    for (Formula side : sides) {
      Formula normal = NormalForm.of(side);
      if (kept.isEmpty() || !kept.get(kept.size() - 1).equals(normal)) {
        kept.add(normal);
      }
    }
    return kept;
  }
}
