package rootwright.working.recurrence;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.Derivation;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Cost;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;
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
  private static final int LONGEST_PERIOD = 3_000_000;
  private static final int SHOWN_PERIOD = 60;
  private static final int LONGEST_EXPONENT = 14;
  private static final int HIGHEST_ORDER = 4;

  private final TwoChecks checks = new TwoChecks();

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

  private static Given given(RecurrenceReader.Read read) {
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
      default -> remainders(read, inquiry, profile);
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
    int wanted = index(index, sequence, HIGHEST_INDEX, inquiry);
    Rational value = sequence.at(index);
    if (value.numerator().abs().bitLength() + value.denominator().bitLength() > MOST_BITS) {
      throw refused(
          "too-large",
          "The member has more than %d digits; ask for its remainder or its last digits."
              .formatted(MOST_DIGITS),
          "%s_%d mod 1000".formatted(sequence.letter(), wanted),
          inquiry);
    }
    int place = wanted - sequence.start();
    Rational again = sequence.members(place + 1).get(place);
    requireSame(RecurrenceWords.find(read), value, again);
    Answer answer = Answer.exact(value);
    List<Working> routes = new ArrayList<>();
    RecurrenceLines lines = new RecurrenceLines(sequence);
    if (place <= RecurrenceLines.LONGEST_TABLE) {
      routes.add(
          working(
              "step-by-step",
              "one member after the other",
              "Each member is made of those before it.",
              lines.stepByStep(wanted),
              answer));
    }
    Recurrence fromZero = sequence.fromZero();
    if (wanted >= 0 && wanted <= RecurrenceLines.HIGHEST_POWER) {
      Optional<ClosedForm> form = ClosedForm.of(fromZero);
      form.ifPresent(
          found ->
              routes.add(
                  working(
                      "characteristic-roots",
                      "powers of the roots",
                      "The powers of a root of the characteristic polynomial satisfy the recurrence.",
                      lines.closedForm(found, fromZero, Optional.of(index)),
                      answer)));
      powerSumFactor(fromZero)
          .ifPresent(
              factor ->
                  routes.add(
                      working(
                          "power-sums",
                          "recognise the power sums of the roots",
                          "The first members tell whether a sequence is that of the power sums.",
                          lines.powerSums(fromZero, factor, wanted),
                          answer)));
    }
    SecondOpinion second =
        new SecondOpinion(
            "all members one after the other, beside powers of x modulo the characteristic polynomial",
            true,
            OptionalInt.empty());
    return solution(
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
                    refused(
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
            working(
                "characteristic-roots",
                "powers of the roots",
                "The powers of a root of the characteristic polynomial satisfy the recurrence.",
                new RecurrenceLines(read.sequence()).closedForm(form, fromZero, Optional.empty()),
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
    return solution(read, answer, routes, slips, second, profile);
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
      requireSame(RecurrenceWords.find(read), Rational.ZERO, sum);
    }
    List<ExactValue> roots = ExactValues.rootsOf(p).stream().map(ExactRoot::value).toList();
    return solution(
        read,
        answer,
        List.of(
            working(
                "characteristic-roots",
                "powers that satisfy the recurrence",
                "The coefficients of the recurrence are those of the polynomial.",
                new RecurrenceLines(read.sequence()).characteristic(roots),
                answer)),
        List.of(),
        new SecondOpinion(
            "its coefficients put on the first members give 0", true, OptionalInt.empty()),
        ClassProfile.EVERYTHING);
  }

  private Solution remainders(RecurrenceReader.Read read, Inquiry inquiry, ClassProfile profile)
      throws UnreadableException {
    Recurrence sequence = read.sequence();
    BigInteger modulus =
        read.ask() instanceof RecurrenceAsk.Period period
            ? period.modulus()
            : ((RecurrenceAsk.Residue) read.ask()).modulus();
    if (modulus.compareTo(BigInteger.TWO) < 0 || !sequence.isWhole()) {
      throw refused(
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

  private Solution residue(
      RecurrenceReader.Read read,
      Residues residues,
      BigInteger index,
      Inquiry inquiry,
      ClassProfile profile)
      throws UnreadableException {
    Recurrence sequence = read.sequence();
    if (index.compareTo(BigInteger.valueOf(sequence.start())) < 0) {
      index(index, sequence, Integer.MAX_VALUE, inquiry);
    }
    BigInteger value = residues.byPowers(index);
    requireSame(
        RecurrenceWords.find(read), Rational.of(value), Rational.of(residues.byMatrices(index)));
    Answer answer = new Answer.Residue(value, residues.modulus());
    RecurrenceLines lines = new RecurrenceLines(sequence);
    List<Working> routes = new ArrayList<>();
    BigInteger place = index.subtract(BigInteger.valueOf(sequence.start()));
    if (place.bitLength() < 31
        && place.intValueExact() <= RecurrenceLines.LONGEST_TABLE
        && place.intValueExact() >= sequence.order()) {
      routes.add(
          working(
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
          working(
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
          working(
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
    return solution(
        read,
        answer,
        routes,
        RecurrenceSlips.ofRemainder(residues, index, answer),
        second,
        profile);
  }

  private Solution period(
      RecurrenceReader.Read read, Residues residues, Inquiry inquiry, ClassProfile profile)
      throws UnreadableException {
    Residues.Cycle cycle =
        residues
            .cycle(LONGEST_PERIOD)
            .orElseThrow(
                () ->
                    refused(
                        "too-large",
                        "The remainders do not return within %d places.".formatted(LONGEST_PERIOD),
                        "",
                        inquiry));
    // As a second opinion: members far out agree, and no shorter step does.
    BigInteger from = BigInteger.valueOf((long) read.sequence().start() + cycle.before());
    for (int k = 0; k < read.sequence().order(); k++) {
      BigInteger at = from.add(BigInteger.valueOf(k));
      requireSame(
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
          working(
              "period",
              "the remainders return",
              "Finitely many rows of neighbours are possible, so they return.",
              new RecurrenceLines(read.sequence()).period(residues, cycle, Optional.empty()),
              answer));
    }
    return solution(
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

  private static int index(BigInteger index, Recurrence sequence, int most, Inquiry inquiry)
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

  private static void requireSame(Formula shown, Rational one, Rational other) {
    if (!one.equals(other)) {
      throw new CheckFailedException(
          "the answer", shown, "one way gives %s, another %s".formatted(one, other));
    }
  }

  private static UnreadableException refused(
      String code, String sentence, String mend, Inquiry inquiry) {
    return new UnreadableException(
        new Refusal(
            code,
            sentence,
            inquiry.statement().find(),
            0,
            "such as u_10, u_100 mod 7, closed form",
            mend));
  }

  private Working working(
      String route, String title, String teaches, List<Step> steps, Answer answer) {
    Derivation.confirmed("route " + route, steps, checks);
    return new Working(route, title, teaches, steps, answer, List.of(), Cost.of(steps));
  }

  private static Solution solution(
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
        given(read),
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
