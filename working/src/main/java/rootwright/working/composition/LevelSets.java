package rootwright.working.composition;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.NamedForm;
import rootwright.working.route.Working;
import rootwright.working.solve.Derivation;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * The sum or the product of the roots of P(P(x)) = c, counted with multiplicity: they lie on the
 * levels P(x) = r, one for each root r of P(y) = c.
 */
public final class LevelSets implements Subject {

  /** Highest degree of P; P(P(x)) has its square for a degree. */
  private static final int HIGHEST_DEGREE = 8;

  /** Highest degree of P for which P(P(x)) is written out. */
  private static final int HIGHEST_WRITTEN = 4;

  private final TwoChecks checks = new TwoChecks();

  @Override
  public boolean recognises(Inquiry inquiry) {
    return !inquiry.polynomial().isEmpty()
        && inquiry.conditions().isEmpty()
        && LevelAsk.isLike(inquiry.ask());
  }

  private record Read(Problem problem, Composed composed) {}

  private static Read readAll(Inquiry inquiry) throws UnreadableException {
    Statement statement = inquiry.statement();
    Problem problem =
        ProblemReader.read(
            new Statement(statement.polynomial(), "S_1", List.of(), statement.unknown()));
    int degree = problem.polynomial().degree();
    if (degree < 2 || degree > HIGHEST_DEGREE) {
      throw new UnreadableException(
          new Refusal(
              degree < 2 ? "unsupported" : "too-large",
              "P has degree %d; P(P(x)) is worked for degrees 2 to %d."
                  .formatted(degree, HIGHEST_DEGREE),
              statement.polynomial(),
              0,
              "a polynomial of degree 2 to %d".formatted(HIGHEST_DEGREE),
              ""));
    }
    LevelAsk ask = LevelAsk.of(inquiry.ask(), problem.unknown());
    return new Read(problem, new Composed(ask, problem.polynomial(), problem.unknown()));
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    return given(readAll(inquiry));
  }

  private static Given given(Read read) {
    Composed composed = read.composed();
    return new Given(
        PolynomialFormula.of(composed.inner(), composed.unknown()),
        read.problem().stated(),
        composed.unknown(),
        List.of(),
        new Formula.Words(composed.ask().words(composed.unknown())),
        List.of(),
        read.problem().reading());
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    Read read = readAll(inquiry);
    Composed composed = read.composed();
    Polynomial whole = composed.whole();
    Formula value = Formula.number(composed.value());
    int index = composed.ask().total() == LevelAsk.Total.SUM ? 1 : whole.degree();
    SecondOpinion second =
        checks.require(
            value, Claim.equal(Setting.of(whole, List.of()), NamedForm.elementary(index), value));
    Answer answer = Answer.exact(composed.value());
    List<Working> routes = new ArrayList<>();
    List<Solution.DeclinedRoute> declined = new ArrayList<>();
    LevelLines lines = new LevelLines(composed);
    Working levels =
        working(
            "levels",
            "level by level",
            "P(x) = r differs from P(x) = 0 in its last coefficient only.",
            lines.byLevels(),
            answer);
    keep(levels, profile, routes, declined);
    if (composed.degree() <= HIGHEST_WRITTEN) {
      Working expanded =
          working(
              "compose",
              "multiply P(P(x)) out",
              "One coefficient of the whole polynomial is enough.",
              lines.byExpansion(),
              answer);
      keep(expanded, profile, routes, declined);
    } else {
      declined.add(
          new Solution.DeclinedRoute(
              "compose",
              "multiply P(P(x)) out",
              "of degree %d it is too long to be written".formatted(whole.degree())));
    }
    routes.sort(Working.CHEAPEST_FIRST);
    return Solution.of("roots-of-composition", given(read), statement(composed), answer, second)
        .withWarnings(warnings(composed))
        .withRoutes(routes)
        .withDeclined(declined)
        .withSlips(LevelSlips.of(composed, answer));
  }

  private Working working(
      String route, String title, String teaches, List<Step> steps, Answer answer) {
    Derivation.confirmed("route " + route, steps, checks);
    return Working.of(route, title, teaches, steps, answer);
  }

  private static void keep(
      Working working,
      ClassProfile profile,
      List<Working> routes,
      List<Solution.DeclinedRoute> declined) {
    if (profile.has(working.route())) {
      routes.add(working);
    } else {
      declined.add(
          new Solution.DeclinedRoute(
              working.route(), working.title(), "this class does not have it yet"));
    }
  }

  private static List<Warning> warnings(Composed composed) {
    Polynomial whole = composed.whole();
    int distinct = whole.squarefreePart().degree();
    return distinct == whole.degree()
        ? List.of()
        : List.of(
            new Warning(
                WarningCode.REPEATED_ROOT,
                "Only %d of the %d roots are distinct; say that they are counted with multiplicity."
                    .formatted(distinct, whole.degree())));
  }

  private static String statement(Composed composed) {
    Formula x = Formula.name(composed.unknown());
    return "Let %s. Find the %s of all %d complex roots of %s, counted with multiplicity."
        .formatted(
            UnicodeWriter.write(
                Formula.equation(
                    composed.ask().applied(x), PolynomialFormula.of(composed.inner(), x))),
            composed.ask().total().word(),
            composed.whole().degree(),
            UnicodeWriter.write(composed.ask().equation(composed.unknown())));
  }
}
