package rootwright.working.sequence;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import rootwright.algebra.companion.CompanionMatrix;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.number.Rational;
import rootwright.working.answer.Answer;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/**
 * Whether S_1, S_2, … are all whole, or all divisible by a number: with lead 1 and whole
 * coefficients the first n decide, by the recurrence.
 */
final class DivisibilityOfSums {

  private static final int FURTHEST = 400;

  private DivisibilityOfSums() {}

  static SequenceFinding find(SumSequence sequence, BigInteger by) {
    int n = sequence.degree();
    List<Rational> sums = sequence.upTo(FURTHEST);
    OptionalInt against = OptionalInt.empty();
    int last = sequence.isWhole() ? n : FURTHEST;
    for (int k = 1; k <= last && against.isEmpty(); k++) {
      if (!divides(by, sums.get(k))) {
        against = OptionalInt.of(k);
      }
    }
    if (against.isEmpty() && !sequence.isWhole()) {
      // Sums that are all whole belong to whole coefficients with lead 1 (Fatou 1906).
      throw new CheckFailedException(
          "the answer", sequence.recurrence(), "no fraction among the first power sums");
    }
    boolean holds = against.isEmpty();
    int shown = holds ? n : against.getAsInt();
    List<Step> steps = new ArrayList<>();
    if (holds) {
      steps.add(sequence.vanishing());
    }
    steps.addAll(sequence.newton(shown));
    String each = by.equals(BigInteger.ONE) ? "whole" : "divisible by " + by;
    steps.add(
        Step.argument(
            Idea.RECURRENCE,
            holds
                ? "S₁ to S_%d are %s and the recurrence has whole factors, so all that follow are"
                    .formatted(n, each)
                : "not " + each,
            holds ? sequence.recurrence() : SumSequence.name(shown)));
    check(sequence, sums, shown);
    return new SequenceFinding(
        "divisibility",
        new Answer.Truth(holds),
        "recurrence",
        holds ? "the first decide for all" : "one that is not " + each,
        "What the recurrence keeps needs to be seen only at the start.",
        steps,
        List.of(),
        List.of(),
        List.of(
            new SequenceFinding.Wrong(
                "first-term-only",
                "S₁ alone does not decide: look at as many as the degree.",
                new Answer.Truth(divides(by, sums.get(1))),
                Idea.RECURRENCE,
                20)),
        SecondOpinion.by("powers of the companion matrix"));
  }

  private static boolean divides(BigInteger by, Rational sum) {
    return sum.over(Rational.of(by)).isInteger();
  }

  private static void check(SumSequence sequence, List<Rational> sums, int last) {
    CompanionMatrix matrix = CompanionMatrix.of(sequence.polynomial());
    for (int k = 1; k <= last; k++) {
      if (!matrix.tracePower(k).equals(sums.get(k))) {
        Formula name = SumSequence.name(k);
        throw new CheckFailedException(
            "the answer", name, PlainWriter.write(name) + " differs by the companion matrix");
      }
    }
  }
}
