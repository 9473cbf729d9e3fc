package rootwright.working.sequence;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rootwright.algebra.companion.CompanionMatrix;
import rootwright.algebra.companion.TraceResidue;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;
import rootwright.working.subject.Inquiry;

/** The period of the power sums modulo m. */
final class PeriodOfSums {

  private static final long LONGEST = 3_000_000;

  private static final BigInteger LARGEST_MODULUS = BigInteger.valueOf(1L << 30);

  private static final int LONGEST_TABLE = 60;

  private PeriodOfSums() {}

  static SequenceFinding find(SumSequence sequence, BigInteger modulus, Inquiry inquiry)
      throws UnreadableException {
    if (modulus.compareTo(BigInteger.ONE) <= 0 || modulus.compareTo(LARGEST_MODULUS) > 0) {
      throw refused(
          inquiry,
          "modulus",
          "The modulus %s is not between 2 and %s.".formatted(modulus, LARGEST_MODULUS));
    }
    if (!sequence.isWhole()) {
      String why = "the power sums are not whole: over lead 1 the coefficients are fractions";
      return new SequenceFinding(
          "period",
          new Answer.None(why),
          "residue-period",
          "",
          "",
          List.of(),
          List.of(),
          List.of(
              new Warning(WarningCode.ZERO_DENOMINATOR, "There are no remainders: " + why + ".")),
          List.of(),
          SecondOpinion.NOTHING_TO_CHECK);
    }
    ModularCycle cycle =
        ModularCycle.of(sequence, modulus, LONGEST)
            .orElseThrow(
                () ->
                    refused(
                        inquiry,
                        "too-large",
                        "The remainders do not return within %d places; no longer periods are"
                                .formatted(LONGEST)
                            + " looked for."));
    Answer answer = new Answer.Count(BigInteger.valueOf(cycle.length()));
    List<Warning> warnings =
        cycle.before() == 0
            ? List.of()
            : List.of(
                new Warning(
                    WarningCode.DOMAIN_OPEN,
                    "The first %d remainders come only once, since the constant term shares a factor"
                            .formatted(cycle.before())
                        + " with %s; the period is that of the others.".formatted(modulus)));
    return new SequenceFinding(
        "period",
        answer,
        "residue-period",
        "step on with remainders until as many as the degree return together",
        "A recurrence with remainders has only finitely many states, so it must return.",
        lines(sequence, cycle, modulus),
        List.of(),
        warnings,
        wrong(sequence, modulus),
        second(sequence, cycle, modulus));
  }

  private static List<Step> lines(SumSequence sequence, ModularCycle cycle, BigInteger modulus) {
    if (cycle.length() > LONGEST_TABLE || cycle.before() > 0) {
      return List.of();
    }
    int n = sequence.degree();
    List<Step> steps = new ArrayList<>(List.of(sequence.vanishing()));
    steps.addAll(sequence.newton(Math.max(1, n - 1)));
    List<BigInteger> shown = new ArrayList<>(cycle.remainders());
    for (int k = 0; k < n; k++) {
      shown.add(cycle.remainders().get(k % cycle.remainders().size()));
    }
    steps.add(
        Step.argument(
            Idea.RECURRENCE,
            "the remainders from S₀ on, each from the %d before it; the last %d are the first again"
                .formatted(n, n),
            new Formula.Words(
                shown.stream().map(BigInteger::toString).collect(Collectors.joining(", ")))));
    steps.add(
        Step.argument(
            Idea.RECURRENCE,
            "no earlier place brings the first %d back together; modulo %s".formatted(n, modulus),
            Formula.number(cycle.length())));
    return steps;
  }

  /** So far somebody who takes a member for a state would look. */
  private static final int FARTHEST_LOOKED = 200;

  /** The remainders of single members are taken for the whole state. */
  private static List<SequenceFinding.Wrong> wrong(SumSequence sequence, BigInteger modulus) {
    List<Rational> sums = sequence.upTo(FARTHEST_LOOKED);
    BigInteger first = sums.get(0).numerator().mod(modulus);
    Optional<Integer> back = Optional.empty();
    for (int k = 1; k < sums.size() && back.isEmpty(); k++) {
      if (sums.get(k).numerator().mod(modulus).equals(first)) {
        back = Optional.of(k);
      }
    }
    return back.stream()
        .map(
            k ->
                new SequenceFinding.Wrong(
                    "one-remainder-returns",
                    "One remainder that returns is not enough: as many neighbours as the degree"
                        + " must return together.",
                    new Answer.Count(BigInteger.valueOf(k)),
                    Idea.RECURRENCE,
                    20))
        .toList();
  }

  /**
   * By powers of the companion matrix: n neighbours return after the period, and not after the
   * period divided by any of its primes.
   */
  private static SecondOpinion second(
      SumSequence sequence, ModularCycle cycle, BigInteger modulus) {
    BigInteger period = BigInteger.valueOf(cycle.length());
    boolean returns = returns(sequence, cycle, period, modulus);
    boolean least =
        primes(cycle.length()).stream()
            .noneMatch(
                p -> returns(sequence, cycle, period.divide(BigInteger.valueOf(p)), modulus));
    if (!returns || !least) {
      throw new CheckFailedException(
          "the answer",
          Formula.number(period),
          "powers of the companion matrix do not confirm the period");
    }
    return SecondOpinion.by("powers of the companion matrix modulo the same number");
  }

  private static boolean returns(
      SumSequence sequence, ModularCycle cycle, BigInteger period, BigInteger modulus) {
    CompanionMatrix matrix = CompanionMatrix.of(sequence.polynomial());
    for (int j = 0; j < sequence.degree(); j++) {
      BigInteger k = BigInteger.valueOf(cycle.before() + j);
      TraceResidue here = matrix.tracePower(k, modulus);
      TraceResidue there = matrix.tracePower(k.add(period), modulus);
      if (!here.equals(there)) {
        return false;
      }
    }
    return true;
  }

  private static List<Long> primes(long number) {
    List<Long> primes = new ArrayList<>();
    long rest = number;
    for (long p = 2; p * p <= rest; p++) {
      if (rest % p == 0) {
        primes.add(p);
        while (rest % p == 0) {
          rest /= p;
        }
      }
    }
    if (rest > 1) {
      primes.add(rest);
    }
    return primes;
  }

  private static UnreadableException refused(Inquiry inquiry, String code, String sentence) {
    return new UnreadableException(
        new Refusal(code, sentence, inquiry.statement().find(), 0, "a smaller modulus", ""));
  }
}
