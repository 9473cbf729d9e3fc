package rootwright.working.sequence;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/** The recurrence of the power sums: P(r) = 0 times a power of r, added up over the roots. */
final class RecurrenceOfSums {

  private RecurrenceOfSums() {}

  static SequenceFinding find(SumSequence sequence) {
    int n = sequence.degree();
    Answer answer = new Answer.FunctionOf(sequence.recurrence());
    List<Step> steps = new ArrayList<>(List.of(sequence.vanishing()));
    steps.add(
        Step.argument(
            Idea.RECURRENCE,
            "times a power of the root, added up over the roots; for k ≥ %d".formatted(n),
            sequence.recurrence()));
    steps.addAll(sequence.newton(n + 2));
    List<Warning> warnings = new ArrayList<>();
    if (sequence.polynomial().coefficient(0).isZero()) {
      warnings.add(
          new Warning(
              WarningCode.ZERO_DENOMINATOR,
              "0 is a root, so the recurrence cannot be run backwards: there are no power sums with"
                  + " a negative index, and 0⁰ counts as 1."));
    }
    for (String fact : sequence.facts()) {
      steps.add(Step.argument(Idea.STATE, "for every k", new Formula.Words(fact)));
    }
    return new SequenceFinding(
        "recurrence",
        answer,
        "vanishing",
        "multiply P(r) = 0 by a power of r and add up",
        "Every root satisfies the recurrence, so their sum does.",
        steps,
        List.of(),
        warnings,
        wrong(sequence),
        second(sequence));
  }

  private static List<SequenceFinding.Wrong> wrong(SumSequence sequence) {
    int n = sequence.degree();
    List<Rational> factors = IntStream.rangeClosed(1, n).mapToObj(sequence::factor).toList();
    Rational lead = sequence.polynomial().lead();
    return List.of(
        new SequenceFinding.Wrong(
            "reduction-sign",
            "Moving terms to the other side changes their signs.",
            new Answer.FunctionOf(
                SumSequence.recurrence(factors.stream().map(Rational::negate).toList())),
            Idea.VANISHING,
            20),
        new SequenceFinding.Wrong(
            "lead-forgotten",
            "Divide by the lead coefficient before you read the factors off.",
            new Answer.FunctionOf(
                SumSequence.recurrence(factors.stream().map(c -> c.times(lead)).toList())),
            Idea.VANISHING,
            15));
  }

  /** The recurrence at 2n neighbours, the power sums taken on enclosures and by normal forms. */
  private static SecondOpinion second(SumSequence sequence) {
    int n = sequence.degree();
    TwoChecks checks = new TwoChecks();
    SecondOpinion last = checks.require(sequence.vanishing().shown(), sequence.vanishing().claim());
    for (int k = n; k < 3 * n; k++) {
      List<Formula> terms = new ArrayList<>();
      for (int j = 1; j <= n; j++) {
        terms.add(Formula.number(sequence.factor(j)).times(SumSequence.name(k - j)));
      }
      Formula right = Formula.sum(terms);
      last =
          checks.require(
              right, Claim.equal(sequence.problem().setting(), SumSequence.name(k), right));
    }
    return last;
  }
}
