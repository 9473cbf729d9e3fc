package rootwright.working.surd;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.RationalValue;
import rootwright.algebra.value.SurdSum;
import rootwright.working.answer.Answer;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.problem.SurdReader;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.Derivation;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.SlipRunner;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * The whole part of a power of a + b·√d, or its last digits: the power sum of a + b·√d and its
 * conjugate is a whole number that follows a recurrence, and the conjugate's power is less than 1.
 */
public final class FloorOfPowers implements Subject {

  /** Exponents up to which the second opinion multiplies the power out. */
  private static final BigInteger MULTIPLIED_OUT = BigInteger.valueOf(4_000);

  /** Exponents up to which a whole part is written out. */
  private static final BigInteger WRITTEN_OUT = BigInteger.valueOf(400);

  private final Kinds kinds;
  private final TwoChecks checks = new TwoChecks();

  /** The kinds that work the power sums. */
  public FloorOfPowers(Kinds kinds) {
    this.kinds = kinds;
  }

  @Override
  public boolean recognises(Inquiry inquiry) {
    return inquiry.polynomial().isEmpty()
        && inquiry.conditions().isEmpty()
        && inquiry.ask().length() < 500
        && FloorAsk.isLike(inquiry.ask());
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    return given(ask(inquiry));
  }

  private static FloorAsk ask(Inquiry inquiry) throws UnreadableException {
    return FloorAsk.read(inquiry.ask())
        .orElseThrow(
            () ->
                refused(
                    inquiry,
                    "unexpected",
                    "The whole part of one power is worked, or its last digits.",
                    "⌊(a + √b)^n⌋ mod m"));
  }

  private static Given given(FloorAsk ask) {
    Formula nothing = new Formula.Words("");
    return new Given(nothing, nothing, "x", List.of(), ask.formula(), List.of(), List.of());
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    FloorAsk ask = ask(inquiry);
    SurdSum base =
        SurdReader.of(ask.base())
            .filter(SurdSum::isReal)
            .orElseThrow(
                () ->
                    refused(
                        inquiry,
                        "not-a-value",
                        "%s is no real number written with square roots."
                            .formatted(UnicodeWriter.write(ask.base())),
                        "a + √b with rational a and b"));
    if (ask.modulus().isPresent() && ask.modulus().get().compareTo(BigInteger.ONE) <= 0) {
      throw refused(inquiry, "modulus", "The modulus must be a whole number above 1.", "mod 10");
    }
    if (ask.modulus().isEmpty() && ask.exponent().compareTo(WRITTEN_OUT) > 0) {
      throw refused(
          inquiry,
          "too-large",
          "The whole part has too many digits to write out; ask for its last digits.",
          UnicodeWriter.write(ask.whole()) + " mod 1000");
    }
    Optional<ConjugatePair> pair =
        ConjugatePair.of(base, ask.exponent())
            .filter(one -> one.number().signum() > 0 && one.conjugateVanishes());
    return pair.isPresent()
        ? byConjugate(ask, base, pair.get(), profile)
        : withoutRoute(ask, base, inquiry);
  }

  private Solution byConjugate(
      FloorAsk ask, SurdSum base, ConjugatePair pair, ClassProfile profile) {
    BigInteger index = pair.index(ask.exponent());
    boolean positive = pair.conjugatePowerIsPositive(index);
    int shift = positive ? (ask.up() ? 0 : -1) : ask.up() ? 1 : 0;
    Formula powerSum = new Formula.Family("S", Formula.number(index));
    Formula wanted =
        ask.modulus()
            .<Formula>map(m -> new Formula.Modulo(powerSum, Formula.number(m)))
            .orElse(powerSum);
    Problem problem =
        new Problem(
            pair.polynomial(),
            PolynomialFormula.of(pair.polynomial(), "x"),
            "x",
            List.of("r", "s"),
            wanted,
            List.of());
    Solution found = kinds.solve(problem, profile);
    Answer answer = shifted(found.answer(), shift);
    SecondOpinion second = secondOpinion(ask, base, answer, found.second());
    Derivation derivation = Derivation.confirmed("the conjugate", lines(ask, pair, index), checks);
    Step last = lastLine(ask, powerSum, answer, shift, positive, index);
    List<Working> routes =
        found.routes().stream()
            .map(derivation::before)
            .map(working -> ended(working, last, answer))
            .toList();
    SlipRunner.Slipped slipped =
        SlipRunner.run(FloorSlips.ALL, new FloorSlips.Turn(ask, pair, shift), answer);
    return Solution.of("floor", given(ask), statement(ask), answer, second)
        .withConditions(List.of("the conjugate lies between −1 and 1"))
        .withRoutes(routes)
        .withDeclined(found.declined())
        .withSlips(slipped);
  }

  private static Answer shifted(Answer answer, int shift) {
    if (answer instanceof Answer.Residue residue) {
      return new Answer.Residue(
          residue.value().add(BigInteger.valueOf(shift)).mod(residue.modulus()), residue.modulus());
    }
    RationalValue value = (RationalValue) ((Answer.Exact) answer).value();
    return Answer.exact(value.number().plus(Rational.of(shift)));
  }

  private static Working ended(Working working, Step last, Answer answer) {
    List<Step> steps = new ArrayList<>(working.steps());
    steps.add(last);
    return working.withSteps(steps).withAnswer(answer);
  }

  private static List<Step> lines(FloorAsk ask, ConjugatePair pair, BigInteger index) {
    Formula number = ConjugatePair.written(pair.number());
    Formula conjugate = ConjugatePair.written(pair.conjugate());
    Setting setting = Setting.ofLetters(List.of());
    List<Step> steps = new ArrayList<>();
    if (pair.halved()) {
      steps.add(
          Step.equation(
              setting,
              Idea.SUBSTITUTE,
              "the exponent is even, and the square is simpler",
              NormalForm.of(ask.base().power(2)),
              number));
    }
    Formula x = Formula.name("x");
    steps.add(
        Step.equation(
            Setting.ofLetters(List.of("x")),
            Idea.CONJUGATE,
            "with its conjugate the number has a whole sum and product",
            NormalForm.of(x.minus(number).times(x.minus(conjugate))),
            PolynomialFormula.of(pair.polynomial(), "x")));
    boolean positive = pair.conjugate().signum() > 0;
    List<Formula> order =
        positive
            ? List.of(Formula.number(0), conjugate, Formula.number(1))
            : List.of(Formula.number(-1), conjugate, Formula.number(0));
    Formula.Comparison less = Formula.Comparison.LESS;
    steps.add(
        new Step(
            new Formula.Relation(order, List.of(less, less)),
            index.equals(BigInteger.ONE)
                ? "so it is less than 1 by size"
                : "so its powers are less than 1 by size",
            Idea.INEQUALITY,
            new Claim.Ascending(order)));
    return steps;
  }

  private static Step lastLine(
      FloorAsk ask,
      Formula powerSum,
      Answer answer,
      int shift,
      boolean positive,
      BigInteger index) {
    Formula moved =
        shift == 0
            ? powerSum
            : shift < 0 ? powerSum.minus(Formula.number(1)) : powerSum.plus(Formula.number(1));
    Formula value =
        answer instanceof Answer.Residue residue
            ? Formula.number(residue.value())
            : ((Answer.Exact) answer).value().toFormula();
    Formula.Comparison end =
        answer instanceof Answer.Residue ? Formula.Comparison.CONGRUENT : Formula.Comparison.EQUAL;
    String why =
        "the conjugate's power number %s lies between %s"
            .formatted(index, positive ? "0 and 1" : "−1 and 0");
    return Step.argument(
        Idea.DOMAIN,
        ask.modulus().map(m -> why + "; modulo " + m).orElse(why),
        new Formula.Relation(
            List.of(ask.whole(), moved, value), List.of(Formula.Comparison.EQUAL, end)));
  }

  /** The power multiplied out as A + B·√d, its whole part by an integer square root. */
  private static SecondOpinion secondOpinion(
      FloorAsk ask, SurdSum base, Answer answer, SecondOpinion ofPowerSum) {
    if (ask.exponent().compareTo(MULTIPLIED_OUT) > 0) {
      return ofPowerSum;
    }
    Optional<BigInteger> whole = WholePart.of(base.power(ask.exponent().intValueExact()), ask.up());
    if (whole.isEmpty()) {
      return ofPowerSum;
    }
    Answer other = asAnswer(whole.get(), ask);
    if (!other.equals(answer)) {
      throw new CheckFailedException(
          "the answer", ask.formula(), "multiplied out, the whole part gives " + other);
    }
    return SecondOpinion.by("the power multiplied out and an integer square root");
  }

  private static Answer asAnswer(BigInteger whole, FloorAsk ask) {
    return ask.modulus()
        .<Answer>map(m -> new Answer.Residue(whole.mod(m), m))
        .orElseGet(() -> Answer.exact(Rational.of(whole)));
  }

  /** The value alone, where the conjugate does not help. */
  private Solution withoutRoute(FloorAsk ask, SurdSum base, Inquiry inquiry)
      throws UnreadableException {
    String why =
        "no conjugate with a whole sum and product stays below 1 by size, so no recurrence gives"
            + " the whole part";
    Optional<BigInteger> whole =
        ask.exponent().compareTo(WRITTEN_OUT) > 0
            ? Optional.empty()
            : WholePart.of(base.power(ask.exponent().intValueExact()), ask.up());
    if (whole.isEmpty()) {
      throw refused(
          inquiry,
          "too-large",
          "There is " + why + ", and the power is too high to be multiplied out.",
          "a conjugate between −1 and 1");
    }
    boolean agrees = WholePart.agrees(whole.get(), ask.power(), ask.up());
    if (!agrees) {
      throw new CheckFailedException("the answer", ask.formula(), "the enclosure lies elsewhere");
    }
    return Solution.of(
            "floor",
            given(ask),
            statement(ask),
            asAnswer(whole.get(), ask),
            SecondOpinion.by("enclosures of the square roots"))
        .withDeclined(
            List.of(
                new Solution.DeclinedRoute("conjugates", "add the power of the conjugate", why)));
  }

  private static String statement(FloorAsk ask) {
    String power = UnicodeWriter.write(NormalForm.of(ask.power()));
    String meaning =
        ask.up()
            ? "the least whole number not below " + power
            : "the greatest whole number not above " + power;
    if (ask.modulus().isEmpty()) {
      return "Find %s, %s.".formatted(UnicodeWriter.write(ask.whole()), meaning);
    }
    BigInteger m = ask.modulus().get();
    String digits =
        m.equals(BigInteger.TEN)
            ? "the last digit"
            : m.equals(BigInteger.valueOf(100))
                ? "the last two digits"
                : "the remainder on division by %s".formatted(m);
    return "Find %s of %s, %s.".formatted(digits, UnicodeWriter.write(ask.whole()), meaning);
  }

  private static UnreadableException refused(
      Inquiry inquiry, String code, String sentence, String expected) {
    return new UnreadableException(
        new Refusal(code, sentence, inquiry.statement().find(), 0, expected, ""));
  }
}
