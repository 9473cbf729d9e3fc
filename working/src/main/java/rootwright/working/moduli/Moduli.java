package rootwright.working.moduli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.problem.Problem;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.Derivation;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * Absolute values: |r − s|, |r| + |s|, Σ |r|², Π |r|. An absolute value is no rational expression
 * in the roots, so real and complex roots are told apart first.
 */
public final class Moduli implements Subject {

  private static final int DIGITS = 60;
  private static final int BITS = 240;

  private final TwoChecks checks = new TwoChecks();

  @Override
  public boolean recognises(Inquiry inquiry) {
    String ask = inquiry.ask().toLowerCase(Locale.ROOT);
    boolean like =
        ask.contains("|")
            || ask.contains("abs")
            || ask.contains("modul")
            || ask.contains("vert")
            || ask.contains("positive difference")
            || ask.contains("distance");
    if (!like
        || ask.length() > 300
        || inquiry.polynomial().isEmpty()
        || !inquiry.conditions().isEmpty()) {
      return false;
    }
    try {
      Problem problem = ProblemReader.read(inquiry.statement());
      return problem.degree() > 1 && ModulusAsk.of(problem.ask(), problem.roots()).isPresent();
    } catch (UnreadableException other) {
      return false;
    }
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    return Given.of(ProblemReader.read(inquiry.statement()));
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    Problem problem = ProblemReader.read(inquiry.statement());
    ModulusAsk ask = ModulusAsk.of(problem.ask(), problem.roots()).orElseThrow();
    Found found =
        ask instanceof ModulusAsk.Single single
            ? new OneModulus(problem, single).find()
            : new AllModuli(problem, ask).find();
    if (found.value().isEmpty()) {
      return Solution.none("moduli", Given.of(problem), statement(problem), found.why())
          .withWarnings(
              List.of(
                  new Warning(
                      WarningCode.ORDER_OPEN,
                      Character.toUpperCase(found.why().charAt(0))
                          + found.why().substring(1)
                          + ".")));
    }
    ExactValue value = found.value().get();
    requireNear(problem, ask, value);
    Answer answer = new Answer.Exact(value);
    List<Working> routes = new ArrayList<>();
    List<Solution.DeclinedRoute> declined = new ArrayList<>();
    for (Found.Way way : found.ways()) {
      if (!profile.has(way.name())) {
        declined.add(
            new Solution.DeclinedRoute(way.name(), way.title(), "this class does not have it yet"));
        continue;
      }
      Derivation.confirmed("route " + way.name(), way.steps(), checks);
      routes.add(Working.of(way.name(), way.title(), way.teaches(), way.steps(), answer));
    }
    routes.sort(Working.CHEAPEST_FIRST);
    List<Solution.WrongTurning> slips = new ArrayList<>(found.slips());
    slips.removeIf(slip -> slip.value().equals(answer));
    return Solution.of(
            "moduli",
            Given.of(problem),
            statement(problem),
            answer,
            SecondOpinion.by("absolute values of the enclosures of the roots", DIGITS - 20))
        .withWarnings(warnings(problem))
        .withRoutes(routes)
        .withDeclined(declined)
        .withSlips(slips);
  }

  /** As a second opinion, the absolute values of certified enclosures. */
  private static void requireNear(Problem problem, ModulusAsk ask, ExactValue value) {
    RealBall ball = enclosed(problem, ask);
    if (!ball.overlaps(value.enclosure(DIGITS).real())) {
      throw new CheckFailedException(
          "the answer", problem.ask(), "enclosures of the roots lie elsewhere");
    }
  }

  /** The ask on enclosures of the roots. */
  static RealBall enclosed(Problem problem, ModulusAsk ask) {
    if (ask instanceof ModulusAsk.Single single) {
      return OneModulus.enclosed(problem, single, DIGITS, BITS);
    }
    boolean sum = ask instanceof ModulusAsk.SumOfPowers;
    int power =
        ask instanceof ModulusAsk.SumOfPowers sums
            ? sums.power()
            : ((ModulusAsk.ProductOfPowers) ask).power();
    RealBall total = RealBall.exact(sum ? 0 : 1);
    for (ExactRoot root : ExactValues.rootsOf(problem.polynomial())) {
      RealBall one = root.value().enclosure(DIGITS).absolute(BITS).power(power);
      for (int k = 0; k < root.multiplicity(); k++) {
        total = sum ? total.plus(one) : total.times(one);
      }
    }
    return total;
  }

  private static List<Warning> warnings(Problem problem) {
    boolean unreal =
        ExactValues.rootsOf(problem.polynomial()).stream().anyMatch(root -> !root.value().isReal());
    return unreal
        ? List.of(
            new Warning(
                WarningCode.NOT_REAL,
                "Not all roots are real, so the bars mean the modulus of a complex number; say so."))
        : List.of();
  }

  private static String statement(Problem problem) {
    List<String> names =
        problem.roots().stream().map(name -> UnicodeWriter.write(Formula.name(name))).toList();
    Optional<ExactRoot> unreal =
        ExactValues.rootsOf(problem.polynomial()).stream()
            .filter(root -> !root.value().isReal())
            .findFirst();
    return "Let %s be the %sroots of %s, counted with multiplicity. Find %s%s."
        .formatted(
            String.join(", ", names),
            unreal.isPresent() ? "complex " : "",
            UnicodeWriter.write(
                Formula.equation(
                    PolynomialFormula.of(problem.polynomial(), problem.unknown()),
                    Formula.number(0))),
            UnicodeWriter.write(problem.ask()),
            unreal.isPresent() ? ", where |z| is the modulus of z" : "");
  }
}
