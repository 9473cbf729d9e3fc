package rootwright.working.recurrence;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.step.Idea;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * Members of a sequence that is given by a linear recurrence: one after the other, through the
 * powers of the roots of its characteristic polynomial, as power sums, and their remainders.
 */
public final class LinearRecurrences implements Subject {

  /** Members beyond this index are worked as remainders only. */
  private static final int HIGHEST_INDEX = 20_000;

  private static final int MOST_DIGITS = 3000;
  private static final int MOST_BITS = 10_000;
  private static final int DIGITS = 60;

  /**
   * The first members of the sequence that a statement gives by its recurrence, with their indices;
   * none if it gives no sequence that can be read.
   */
  public static NavigableMap<Integer, Rational> members(Statement statement, int many) {
    NavigableMap<Integer, Rational> members = new TreeMap<>();
    try {
      Inquiry inquiry = Inquiry.of(statement);
      if (!RecurrenceReader.isLike(inquiry)) {
        return members;
      }
      Recurrence sequence = RecurrenceReader.read(inquiry).sequence();
      for (Rational member : sequence.members(many)) {
        members.put(sequence.start() + members.size(), member);
      }
    } catch (UnreadableException none) {
      members.clear();
    }
    return members;
  }

  @Override
  public boolean recognises(Inquiry inquiry) {
    return RecurrenceReader.isLike(inquiry);
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    return given(RecurrenceReader.read(inquiry));
  }

  static Given given(RecurrenceReader.Read read) {
    Formula nothing = new Formula.Words("");
    return new Given(
        nothing,
        nothing,
        "",
        List.of(),
        RecurrenceWords.find(read),
        RecurrenceWords.conditions(read.sequence()),
        List.of());
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    RecurrenceReader.Read read = RecurrenceReader.read(inquiry);
    return switch (kind(read.ask())) {
      case "member" -> member(read, ((RecurrenceAsk.Member) read.ask()).index(), inquiry, profile);
      case "closed-form" -> closedForm(read, inquiry, profile);
      case "characteristic" -> characteristic(read);
      default -> SequenceRemainders.of(read, inquiry, profile);
    };
  }

  private static String kind(RecurrenceAsk ask) {
    if (ask instanceof RecurrenceAsk.Member) {
      return "member";
    } else if (ask instanceof RecurrenceAsk.ClosedForm) {
      return "closed-form";
    }
    return ask instanceof RecurrenceAsk.Characteristic ? "characteristic" : "remainder";
  }

  private Solution member(
      RecurrenceReader.Read read, BigInteger index, Inquiry inquiry, ClassProfile profile)
      throws UnreadableException {
    Recurrence sequence = read.sequence();
    int wanted = SequenceSolution.index(index, sequence, HIGHEST_INDEX, inquiry);
    Rational value = sequence.at(index);
    if (value.numerator().abs().bitLength() + value.denominator().bitLength() > MOST_BITS) {
      throw SequenceSolution.refused(
          "too-large",
          "The member has more than %d digits; ask for its remainder or its last digits."
              .formatted(MOST_DIGITS),
          "%s_%d mod 1000".formatted(sequence.letter(), wanted),
          inquiry);
    }
    int place = wanted - sequence.start();
    Rational again = sequence.members(place + 1).get(place);
    SequenceSolution.requireSame(RecurrenceWords.find(read), value, again);
    Answer answer = Answer.exact(value);
    List<Working> routes = new ArrayList<>();
    RecurrenceLines lines = new RecurrenceLines(sequence);
    if (place <= RecurrenceLines.LONGEST_TABLE) {
      routes.add(
          SequenceSolution.working(
              "step-by-step",
              "one member after the other",
              "Each member is made of those before it.",
              lines.stepByStep(wanted),
              answer));
    }
    Recurrence fromZero = sequence.fromZero();
    if (wanted >= 0 && wanted <= ClosedFormLines.HIGHEST_POWER) {
      Optional<ClosedForm> form = ClosedForm.of(fromZero);
      form.ifPresent(
          found ->
              routes.add(
                  SequenceSolution.working(
                      "characteristic-roots",
                      "powers of the roots",
                      "The powers of a root of the characteristic polynomial satisfy the recurrence.",
                      new ClosedFormLines(sequence).closedForm(found, fromZero, Optional.of(index)),
                      answer)));
      powerSumFactor(fromZero)
          .ifPresent(
              factor ->
                  routes.add(
                      SequenceSolution.working(
                          "power-sums",
                          "recognise the power sums of the roots",
                          "The first members tell whether a sequence is that of the power sums.",
                          new ClosedFormLines(sequence).powerSums(fromZero, factor, wanted),
                          answer)));
    }
    SecondOpinion second =
        new SecondOpinion(
            "all members one after the other, beside powers of x modulo the characteristic polynomial",
            true,
            OptionalInt.empty());
    return SequenceSolution.solution(
        read, answer, routes, RecurrenceSlips.of(sequence, wanted, answer), second, profile);
  }

  /** c, if the sequence is c times the power sums of the roots and has order 2 or more. */
  private static Optional<Rational> powerSumFactor(Recurrence fromZero) {
    Polynomial p = fromZero.characteristic();
    if (p.degree() < 2 || fromZero.first().get(0).isZero()) {
      return Optional.empty();
    }
    Rational factor = fromZero.first().get(0).over(Rational.of(p.degree()));
    PowerSums sums = PowerSums.of(p);
    for (int k = 0; k < p.degree(); k++) {
      if (!sums.value(k).times(factor).equals(fromZero.first().get(k))) {
        return Optional.empty();
      }
    }
    return Optional.of(factor);
  }

  private Solution closedForm(RecurrenceReader.Read read, Inquiry inquiry, ClassProfile profile)
      throws UnreadableException {
    Recurrence fromZero = read.sequence().fromZero();
    ClosedForm form =
        ClosedForm.of(fromZero)
            .orElseThrow(
                () ->
                    SequenceSolution.refused(
                        "unsupported",
                        "The roots of the characteristic polynomial have no short exact form.",
                        read.sequence().letter() + "_20",
                        inquiry));
    Formula k = Formula.name(read.sequence().index());
    Formula written = form.formula(k);
    for (int at = 0; at <= 12; at++) {
      Rational member = fromZero.members(at + 1).get(at);
      boolean holds =
          form.enclosure(at, DIGITS)
              .minus(new RationalValue(member).enclosure(DIGITS))
              .containsZero();
      if (!holds) {
        throw new CheckFailedException("the answer", written, "member %d differs".formatted(at));
      }
    }
    Answer answer = new Answer.FunctionOf(written);
    List<Working> routes =
        List.of(
            SequenceSolution.working(
                "characteristic-roots",
                "powers of the roots",
                "The powers of a root of the characteristic polynomial satisfy the recurrence.",
                new ClosedFormLines(read.sequence()).closedForm(form, fromZero, Optional.empty()),
                answer));
    SecondOpinion second =
        new SecondOpinion(
            "the first thirteen members in balls, which fix the sequence",
            true,
            OptionalInt.of(30));
    List<Solution.WrongTurning> slips = new ArrayList<>();
    Recurrence later =
        new Recurrence(
            fromZero.letter(),
            fromZero.index(),
            fromZero.coefficients(),
            Rational.ZERO,
            0,
            fromZero.members(fromZero.order() + 1).subList(1, fromZero.order() + 1));
    ClosedForm.of(later)
        .map(shifted -> (Answer) new Answer.FunctionOf(shifted.formula(k)))
        .filter(shifted -> !shifted.equals(answer))
        .ifPresent(
            shifted ->
                slips.add(
                    new Solution.WrongTurning(
                        "index-off-by-one",
                        "The counting begins with the index of the first given member.",
                        shifted,
                        Idea.RECURRENCE,
                        30)));
    return SequenceSolution.solution(read, answer, routes, slips, second, profile);
  }

  private Solution characteristic(RecurrenceReader.Read read) {
    Polynomial p = read.sequence().characteristic();
    Answer answer = new Answer.PolynomialIn(p.primitive(), "x");
    List<Rational> members = read.sequence().members(3 * p.degree() + 3);
    for (int at = p.degree(); at < members.size(); at++) {
      Rational sum = Rational.ZERO;
      for (int k = 0; k <= p.degree(); k++) {
        sum = sum.plus(p.coefficient(k).times(members.get(at - p.degree() + k)));
      }
      SequenceSolution.requireSame(RecurrenceWords.find(read), Rational.ZERO, sum);
    }
    List<ExactValue> roots = ExactValues.rootsOf(p).stream().map(ExactRoot::value).toList();
    return SequenceSolution.solution(
        read,
        answer,
        List.of(
            SequenceSolution.working(
                "characteristic-roots",
                "powers that satisfy the recurrence",
                "The coefficients of the recurrence are those of the polynomial.",
                new ClosedFormLines(read.sequence()).characteristic(roots),
                answer)),
        List.of(),
        new SecondOpinion(
            "its coefficients put on the first members give 0", true, OptionalInt.empty()),
        ClassProfile.EVERYTHING);
  }
}
