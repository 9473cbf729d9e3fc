package rootwright.working.recurrence;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.Derivation;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Step;
import rootwright.working.subject.Inquiry;

/** What all asks about a sequence share: how a way is confirmed, refused and put together. */
final class SequenceSolution {

  private static final TwoChecks CHECKS = new TwoChecks();

  private SequenceSolution() {}

  /**
   * The index of a member that can be reached; refused if it lies before the first or beyond {@code
   * most}.
   */
  static int index(BigInteger index, Recurrence sequence, int most, Inquiry inquiry)
      throws UnreadableException {
    if (index.compareTo(BigInteger.valueOf(sequence.start())) < 0) {
      throw refused(
          "unsupported",
          "The sequence begins with %s_%d.".formatted(sequence.letter(), sequence.start()),
          "%s_%d".formatted(sequence.letter(), sequence.start() + 10),
          inquiry);
    } else if (index.compareTo(BigInteger.valueOf(most)) > 0) {
      throw refused(
          "too-large",
          "Members are worked up to index %d; beyond that, ask for a remainder or last digits."
              .formatted(most),
          "%s_%s mod 1000".formatted(sequence.letter(), index),
          inquiry);
    }
    return index.intValueExact();
  }

  /** Fails if two ways to one number differ. */
  static void requireSame(Formula shown, Rational one, Rational other) {
    if (!one.equals(other)) {
      throw new CheckFailedException(
          "the answer", shown, "one way gives %s, another %s".formatted(one, other));
    }
  }

  /** A refusal of the ask with what could be asked instead. */
  static UnreadableException refused(String code, String sentence, String mend, Inquiry inquiry) {
    return new UnreadableException(
        new Refusal(
            code,
            sentence,
            inquiry.statement().find(),
            0,
            "such as u_10, u_100 mod 7, closed form",
            mend));
  }

  /** A way whose lines both checks confirm. */
  static Working working(
      String route, String title, String teaches, List<Step> steps, Answer answer) {
    Derivation.confirmed("route " + route, steps, CHECKS);
    return Working.of(route, title, teaches, steps, answer);
  }

  /** The ways that the class has, shortest first, with what a coach must see of the sequence. */
  static Solution solution(
      RecurrenceReader.Read read,
      Answer answer,
      List<Working> found,
      List<Solution.WrongTurning> slips,
      SecondOpinion second,
      ClassProfile profile) {
    List<Working> routes = new ArrayList<>();
    List<Solution.DeclinedRoute> declined = new ArrayList<>();
    for (Working working : found) {
      if (profile.has(working.route())) {
        routes.add(working);
      } else {
        declined.add(
            new Solution.DeclinedRoute(
                working.route(), working.title(), "this class does not have it yet"));
      }
    }
    routes.sort(Comparator.comparing(Working::cost));
    List<Warning> warnings = new ArrayList<>();
    if (read.redundant()) {
      warnings.add(
          new Warning(
              WarningCode.REDUNDANT,
              "%d first members are enough; the others follow."
                  .formatted(read.sequence().order())));
    }
    Polynomial p = read.sequence().characteristic();
    if (!p.isSquarefree() && !(read.ask() instanceof RecurrenceAsk.Residue)) {
      warnings.add(
          new Warning(
              WarningCode.REPEATED_ROOT,
              "The characteristic polynomial has a repeated root: powers alone are not enough, they come with factors %s, …"
                  .formatted(
                      UnicodeWriter.write(NormalForm.of(Formula.name(read.sequence().index()))))));
    }
    return new Solution(
        "recurrence",
        LinearRecurrences.given(read),
        RecurrenceWords.statement(read),
        answer,
        Optional.empty(),
        List.of(),
        warnings,
        routes,
        declined,
        slips,
        List.of(),
        second);
  }
}
