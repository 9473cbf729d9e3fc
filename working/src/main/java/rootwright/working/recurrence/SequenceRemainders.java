package rootwright.working.recurrence;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.working.answer.Answer;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.subject.Inquiry;

/** The remainders of the members of a sequence: of one member, and when they return. */
final class SequenceRemainders {

  private static final int LONGEST_PERIOD = 3_000_000;
  private static final int SHOWN_PERIOD = 60;
  private static final int LONGEST_EXPONENT = 14;
  private static final int HIGHEST_ORDER = 4;

  private SequenceRemainders() {}

  /** The remainder of a member, or the period of all remainders. */
  static Solution of(RecurrenceReader.Read read, Inquiry inquiry, ClassProfile profile)
      throws UnreadableException {
    Recurrence sequence = read.sequence();
    BigInteger modulus =
        read.ask() instanceof RecurrenceAsk.Period period
            ? period.modulus()
            : ((RecurrenceAsk.Residue) read.ask()).modulus();
    if (modulus.compareTo(BigInteger.TWO) < 0 || !sequence.isWhole()) {
      throw SequenceSolution.refused(
          "unsupported",
          modulus.compareTo(BigInteger.TWO) < 0
              ? "A modulus is at least 2."
              : "Remainders are worked where all coefficients and first members are whole.",
          sequence.letter() + "_10",
          inquiry);
    }
    Residues residues = new Residues(sequence, modulus);
    return read.ask() instanceof RecurrenceAsk.Residue residue
        ? residue(read, residues, residue.index(), inquiry, profile)
        : period(read, residues, inquiry, profile);
  }

  private static Solution residue(
      RecurrenceReader.Read read,
      Residues residues,
      BigInteger index,
      Inquiry inquiry,
      ClassProfile profile)
      throws UnreadableException {
    Recurrence sequence = read.sequence();
    if (index.compareTo(BigInteger.valueOf(sequence.start())) < 0) {
      SequenceSolution.index(index, sequence, Integer.MAX_VALUE, inquiry);
    }
    BigInteger value = residues.byPowers(index);
    SequenceSolution.requireSame(
        RecurrenceWords.find(read), Rational.of(value), Rational.of(residues.byMatrices(index)));
    Answer answer = new Answer.Residue(value, residues.modulus());
    RemainderLines lines = new RemainderLines(sequence);
    List<Working> routes = new ArrayList<>();
    BigInteger place = index.subtract(BigInteger.valueOf(sequence.start()));
    if (place.bitLength() < 31
        && place.intValueExact() <= RecurrenceLines.LONGEST_TABLE
        && place.intValueExact() >= sequence.order()) {
      routes.add(
          SequenceSolution.working(
              "remainders",
              "one remainder after the other",
              "Only the remainders of the members before are needed.",
              lines.remainders(residues, index.intValueExact()),
              answer));
    }
    Optional<Residues.Cycle> cycle = residues.cycle(2 * SHOWN_PERIOD);
    boolean reached =
        cycle
            .filter(found -> found.length() <= SHOWN_PERIOD)
            .filter(found -> place.compareTo(BigInteger.valueOf(found.before())) >= 0)
            .isPresent();
    if (reached) {
      routes.add(
          SequenceSolution.working(
              "period",
              "the remainders return",
              "Finitely many rows of neighbours are possible, so they return.",
              lines.period(residues, cycle.orElseThrow(), Optional.of(index)),
              answer));
    }
    if (place.bitLength() <= LONGEST_EXPONENT
        && sequence.homogeneous().order() <= HIGHEST_ORDER
        && place.compareTo(BigInteger.valueOf(sequence.homogeneous().order())) > 0
        && residues.modulus().bitLength() <= 64) {
      routes.add(
          SequenceSolution.working(
              "squaring",
              "powers of x by squaring",
              "x to a high power is reached by squaring, reduced after every step.",
              lines.bySquaring(residues, index),
              answer));
    }
    SecondOpinion second =
        new SecondOpinion(
            "powers of a matrix, beside powers of x modulo the characteristic polynomial",
            true,
            OptionalInt.empty());
    return SequenceSolution.solution(
        read,
        answer,
        routes,
        RecurrenceSlips.ofRemainder(residues, index, answer),
        second,
        profile);
  }

  private static Solution period(
      RecurrenceReader.Read read, Residues residues, Inquiry inquiry, ClassProfile profile)
      throws UnreadableException {
    Residues.Cycle cycle =
        residues
            .cycle(LONGEST_PERIOD)
            .orElseThrow(
                () ->
                    SequenceSolution.refused(
                        "too-large",
                        "The remainders do not return within %d places.".formatted(LONGEST_PERIOD),
                        "",
                        inquiry));
    // As a second opinion: members far out agree, and no shorter step does.
    BigInteger from = BigInteger.valueOf((long) read.sequence().start() + cycle.before());
    for (int k = 0; k < read.sequence().order(); k++) {
      BigInteger at = from.add(BigInteger.valueOf(k));
      SequenceSolution.requireSame(
          RecurrenceWords.find(read),
          Rational.of(residues.byMatrices(at)),
          Rational.of(residues.byMatrices(at.add(BigInteger.valueOf(cycle.length())))));
    }
    for (int prime = 2; prime <= cycle.length(); prime++) {
      int shorter = cycle.length() / prime;
      boolean returns = cycle.length() % prime == 0;
      for (int k = 0; returns && k < read.sequence().order(); k++) {
        BigInteger at = from.add(BigInteger.valueOf(k));
        returns =
            residues
                .byMatrices(at)
                .equals(residues.byMatrices(at.add(BigInteger.valueOf(shorter))));
      }
      if (returns) {
        throw new CheckFailedException(
            "the answer",
            RecurrenceWords.find(read),
            "the remainders return after %d places already".formatted(shorter));
      }
    }
    Answer answer = new Answer.Count(BigInteger.valueOf(cycle.length()));
    List<Working> routes = new ArrayList<>();
    if (cycle.length() <= SHOWN_PERIOD && cycle.before() <= SHOWN_PERIOD) {
      routes.add(
          SequenceSolution.working(
              "period",
              "the remainders return",
              "Finitely many rows of neighbours are possible, so they return.",
              new RemainderLines(read.sequence()).period(residues, cycle, Optional.empty()),
              answer));
    }
    return SequenceSolution.solution(
        read,
        answer,
        routes,
        List.of(),
        new SecondOpinion(
            "powers of a matrix, for the period and for all its divisors",
            true,
            OptionalInt.empty()),
        profile);
  }
}
