package rootwright.working.identity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.working.answer.Answer;
import rootwright.working.route.Working;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** The working that shows an example against a conjecture. */
record Refutation(Conjecture conjecture, Counterexample example) {

  private static final Setting NUMBERS = Setting.ofLetters(List.of());

  /** The lines: the numbers, the conditions hold, the two sides differ. */
  Working working() {
    Map<Formula, Formula> images = new HashMap<>();
    List<Formula> named = new ArrayList<>();
    for (int k = 0; k < conjecture.letters().size(); k++) {
      Formula name = Formula.name(conjecture.letters().get(k));
      Formula value = Formula.number(example.values().get(k));
      images.put(name, value);
      named.add(Formula.equation(name, value));
    }
    List<Step> steps = new ArrayList<>();
    steps.add(
        Step.argument(
            Idea.CASES,
            "try small numbers that satisfy the conditions",
            named.size() == 1 ? named.get(0) : new Formula.Listing(named)));
    for (Equation condition : conjecture.conditions()) {
      steps.add(
          Step.equation(
              NUMBERS,
              Idea.EVALUATE,
              "the condition holds",
              ProofRoutes.put(condition.left(), images),
              ProofRoutes.put(condition.right(), images)));
    }
    Rational left = value(example.claim().left(), images);
    Rational right = value(example.claim().right(), images);
    steps.add(side("the left side", example.claim().left(), images, left));
    if (!(example.claim().right() instanceof Formula.Numeral)) {
      steps.add(side("the right side", example.claim().right(), images, right));
    }
    steps.add(
        Step.argument(
            Idea.CASES,
            "so the claim is false; one example is enough",
            new Formula.Relation(
                List.of(Formula.number(left), Formula.number(right)),
                List.of(Formula.Comparison.NOT_EQUAL))));
    return Working.of(
        "counterexample",
        "one example against it",
        "A single example refutes a claim; no number of examples proves one.",
        steps,
        new Answer.Truth(false));
  }

  private static Step side(
      String reason, Formula side, Map<Formula, Formula> images, Rational value) {
    return Step.equation(
        NUMBERS, Idea.EVALUATE, reason, ProofRoutes.put(side, images), Formula.number(value));
  }

  private static Rational value(Formula side, Map<Formula, Formula> images) {
    try {
      var value = FormulaExpansion.expand(ProofRoutes.put(side, images), Map.of());
      return value
          .numerator()
          .coefficient(Monomial.ONE)
          .over(value.denominator().coefficient(Monomial.ONE));
    } catch (UnreadableException impossible) {
      throw new IllegalStateException("numbers put for all letters of " + side, impossible);
    }
  }
}
