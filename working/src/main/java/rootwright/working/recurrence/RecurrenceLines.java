package rootwright.working.recurrence;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.number.Rational;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** The lines in which a sequence goes on by its rule, one member after the other. */
final class RecurrenceLines {

  /** So many members are written one by one. */
  static final int LONGEST_TABLE = 24;

  /** How a member is called in a claim. */
  private static final String CLAIMED = "u";

  private final Recurrence sequence;

  RecurrenceLines(Recurrence sequence) {
    this.sequence = sequence;
  }

  Formula member(int at) {
    return Formula.name(sequence.letter() + "_" + at);
  }

  /** The right side of the recurrence for one member, in the members before it. */
  private Formula rule(int at, String letter) {
    List<Formula> terms = new ArrayList<>();
    for (int k = 0; k < sequence.order(); k++) {
      Rational c = sequence.coefficients().get(k);
      if (!c.isZero()) {
        terms.add(Formula.number(c).times(Formula.name(letter + "_" + (at - 1 - k))));
      }
    }
    if (!sequence.constant().isZero()) {
      terms.add(Formula.number(sequence.constant()));
    }
    return NormalForm.of(Formula.sum(terms));
  }

  /** The same in numbers, for members that are known or the remainders in their places. */
  Formula ruleInNumbers(int at, List<Rational> members) {
    List<Formula> terms = new ArrayList<>();
    for (int k = 0; k < sequence.order(); k++) {
      Rational c = sequence.coefficients().get(k);
      if (!c.isZero()) {
        Formula value = Formula.number(members.get(at - 1 - k - sequence.start()));
        terms.add(
            c.isOne()
                ? value
                : c.equals(Rational.MINUS_ONE)
                    ? new Formula.Negative(value)
                    : Formula.number(c).times(value));
      }
    }
    if (!sequence.constant().isZero()) {
      terms.add(Formula.number(sequence.constant()));
    }
    return Formula.sum(terms);
  }

  /**
   * The members with their meaning: the first ones are numbers, the others follow by the rule. In a
   * claim they are called u, as e, h, p and S have meanings of their own there.
   */
  private Setting setting(int last) {
    Setting setting = Setting.ofLetters(List.of());
    for (int k = 0; k < sequence.order(); k++) {
      setting =
          setting.withDefinition(
              CLAIMED + "_" + (sequence.start() + k), Formula.number(sequence.first().get(k)));
    }
    for (int at = sequence.start() + sequence.order(); at <= last; at++) {
      setting = setting.withDefinition(CLAIMED + "_" + at, rule(at, CLAIMED));
    }
    return setting;
  }

  /** One member after the other. */
  List<Step> stepByStep(int last) {
    List<Rational> members = sequence.members(last - sequence.start() + 1);
    Setting setting = setting(last);
    List<Step> steps = new ArrayList<>();
    for (int at = sequence.start() + sequence.order(); at <= last; at++) {
      boolean first = steps.isEmpty();
      Formula value = Formula.number(members.get(at - sequence.start()));
      Formula numbers = ruleInNumbers(at, members);
      List<Formula> sides = new ArrayList<>(List.of(member(at)));
      if (first) {
        sides.add(rule(at, sequence.letter()));
      }
      sides.add(numbers);
      if (!numbers.equals(value)) {
        sides.add(value);
      }
      steps.add(
          new Step(
              Formula.equation(sides.toArray(Formula[]::new)),
              first ? "the recurrence" : "",
              Idea.RECURRENCE,
              Claim.equal(setting, Formula.name(CLAIMED + "_" + at), numbers, value)));
    }
    if (steps.isEmpty()) {
      Formula value = Formula.number(members.get(last - sequence.start()));
      steps.add(
          new Step(
              Formula.equation(member(last), value),
              "given",
              Idea.STATE,
              Claim.equal(setting, Formula.name(CLAIMED + "_" + last), value)));
    }
    return steps;
  }
}
