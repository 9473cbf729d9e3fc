package rootwright.working.integers;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.SlipRunner;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Step;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * All values of a letter for which a polynomial has integer roots: finitely many, and proved to be
 * all by divisors or by squares, not by searching a window.
 */
public final class IntegerRoots implements Subject {

  /** Letters up to this size are factored one by one as a second opinion. */
  private static final int WINDOW = 250;

  private final TwoChecks checks = new TwoChecks();

  @Override
  public boolean recognises(Inquiry inquiry) {
    return !inquiry.polynomial().isEmpty()
        && inquiry.conditions().stream().noneMatch(LetterProblemReader::isOther)
        && inquiry.conditions().stream().anyMatch(LetterProblemReader::isWish);
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    return given(LetterProblemReader.read(inquiry));
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    LetterProblem problem = LetterProblemReader.read(inquiry);
    Optional<Finiteness> reason = Finiteness.of(problem);
    if (reason.isEmpty()) {
      return withoutReason(problem, inquiry);
    }
    List<Found> found = reason.get().candidates(problem);
    secondOpinion(problem, found);
    List<Step> steps = new IntegerRootLines(problem, found).of(reason.get());
    for (Step step : steps) {
      if (!step.isArgument()) {
        checks.require(step.shown(), step.claim());
      }
    }
    Answer answer = answer(problem, found);
    boolean drops = reason.get() instanceof Finiteness.LetterDropsOut;
    Working working =
        Working.of(
            drops ? "divisors" : "bounded-squares",
            drops ? "the letter drops out, and only divisors are left" : "squares bound the roots",
            drops
                ? "A product of whole numbers that is known leaves finitely many cases."
                : "Whole numbers with a known sum of squares are few.",
            steps,
            answer);
    boolean taught = profile.has(working.route());
    SlipRunner.Slipped slipped = SlipRunner.run(IntegerSlips.ALL, problem, answer);
    return Solution.of(
            "integer-roots",
            given(problem),
            statement(problem),
            answer,
            SecondOpinion.by("every value up to ±%d factored by itself".formatted(WINDOW)))
        .withWarnings(warnings(problem, found))
        .withRoutes(taught ? List.of(working) : List.of())
        .withSlips(slipped);
  }

  /** The values, or how many there are. */
  static Answer answer(LetterProblem problem, List<Found> found) {
    if (problem.counting()) {
      return new Answer.Count(BigInteger.valueOf(found.size()));
    }
    List<ExactValue> values = new ArrayList<>();
    found.forEach(each -> values.add(new RationalValue(each.letter())));
    return new Answer.Solutions(values);
  }

  /** Another way: inside a window, each value of the letter is tried and P factored. */
  private static void secondOpinion(LetterProblem problem, List<Found> found) {
    for (int k = -WINDOW; k <= WINDOW; k++) {
      Rational letter = Rational.of(k);
      boolean allowed =
          problem.domain().map(domain -> domain.contains(new RationalValue(letter))).orElse(true);
      boolean listed = found.stream().anyMatch(each -> each.letter().equals(letter));
      if (allowed && listed != problem.fits(letter)) {
        throw new CheckFailedException(
            "the answer",
            problem.stated(),
            "for %s = %d the polynomial was factored, and the list says otherwise"
                .formatted(problem.letter(), k));
      }
    }
  }

  /** Neither divisors nor squares: infinitely many, or beyond us. */
  private static Solution withoutReason(LetterProblem problem, Inquiry inquiry)
      throws UnreadableException {
    boolean everyRoot =
        problem.slope().degree() == 0 && (problem.wish().oneIsEnough() || problem.degree() == 2);
    if (!everyRoot) {
      throw new UnreadableException(
          new Refusal(
              "too-hard",
              "Neither divisors nor squares show here that only finitely many values are possible.",
              inquiry.statement().polynomial(),
              0,
              "a letter that drops out at a whole number, or that leaves the sum of squares alone",
              ""));
    }
    Formula letter = Formula.name(problem.letter());
    String r = problem.letter().equals("r") ? "s" : "r";
    Formula family =
        PolynomialFormula.of(
            problem.base().times(problem.slope().coefficient(0).reciprocal().negate()), r);
    String why =
        "infinitely many: %s for every whole number %s"
            .formatted(UnicodeWriter.write(Formula.equation(letter, family)), r);
    return Solution.none("integer-roots", given(problem), statement(problem), why)
        .withWarnings(
            List.of(
                new Warning(
                    WarningCode.SEVERAL_PARAMETERS,
                    "Every whole number can be made a root, so there are infinitely many values; ask for a root of a given size, or let the letter stand elsewhere.")));
  }

  private static List<Warning> warnings(LetterProblem problem, List<Found> found) {
    List<Warning> warnings = new ArrayList<>();
    boolean repeated =
        found.stream()
            .anyMatch(each -> each.roots().stream().distinct().count() < each.roots().size());
    if (repeated && !problem.wish().oneIsEnough()) {
      warnings.add(
          new Warning(
              WarningCode.REPEATED_ROOT,
              "Equal roots are counted in; say “distinct” if they are not wanted."));
    }
    boolean negative =
        found.stream().anyMatch(each -> each.roots().stream().anyMatch(r -> r.signum() < 0));
    if (negative) {
      warnings.add(
          new Warning(
              WarningCode.DOMAIN_OPEN,
              "Negative roots are counted in; say “positive integer roots” if they are not wanted."));
    }
    if (found.isEmpty()) {
      warnings.add(
          new Warning(
              WarningCode.NO_PARAMETER,
              "There is no such %s; “no such value” is the answer.".formatted(problem.letter())));
    }
    return warnings;
  }

  private static String statement(LetterProblem problem) {
    String equation =
        problem.stated() instanceof Formula.Relation
            ? UnicodeWriter.write(problem.stated())
            : UnicodeWriter.write(Formula.equation(problem.stated(), Formula.number(0)));
    return "%s %s for which %s has %s."
        .formatted(
            problem.counting() ? "How many values are there of" : "Find all values of",
            UnicodeWriter.write(Formula.name(problem.letter()))
                + problem.domain().map(d -> " among the " + d.words()).orElse(""),
            equation,
            problem.wish().inWords())
        .replaceFirst("\\.$", problem.counting() ? "?" : ".");
  }

  private static Given given(LetterProblem problem) {
    return new Given(
        problem.stated(),
        problem.stated(),
        problem.unknown(),
        List.of(),
        problem.counting()
            ? new Formula.Words("the number of values of " + problem.letter())
            : Formula.name(problem.letter()),
        problem.conditions().stream().<Formula>map(Formula.Words::new).collect(Collectors.toList()),
        List.of());
  }
}
