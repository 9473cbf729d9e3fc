package rootwright.working.values;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import rootwright.algebra.ideal.Ideal;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.AskLimits;
import rootwright.working.ask.AskedReader;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.NamedForm;
import rootwright.working.route.Working;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.SlipRunner;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.Step;

/** Finds everything that can be said of numbers with given symmetric values. */
final class SolvedData {

  /**
   * Slips of the roots of a polynomial that can be taken here too: none that reads coefficients.
   */
  private static final Set<String> SHARED_SLIPS =
      Set.of(
          "newton-all-plus",
          "newton-count",
          "power-sum-zero-is-one",
          "reduction-sign",
          "truncated-recurrence",
          "square-of-the-sum",
          "two-root-habit",
          "constant-once",
          "reciprocal-of-the-sum",
          "product-spread",
          "square-of-reciprocals-sum");

  private final Kinds kinds;
  private final TwoChecks checks;

  SolvedData(Kinds kinds, TwoChecks checks) {
    this.kinds = kinds;
    this.checks = checks;
  }

  /**
   * The solution, whatever the data leave.
   *
   * @param find the ask as typed, into which a refusal points
   * @throws UnreadableException if a power in the ask is too far out to be written
   */
  Solution of(SymmetricData data, DataAskText ask, String find, ClassProfile profile)
      throws UnreadableException {
    Outcome outcome = Elimination.of(data);
    if (outcome instanceof Outcome.Single single) {
      return single(data, ask, single.elementary(), List.of(), find, profile);
    } else if (outcome instanceof Outcome.Several several) {
      return several(data, ask, several.cases(), find, profile);
    } else if (outcome instanceof Outcome.Open open) {
      Optional<Solution> integers =
          IntegerNumbers.concerns(data)
              ? new IntegerNumbers(data, open.ideal(), checks).of(ask)
              : Optional.empty();
      if (integers.isPresent()) {
        return integers.get();
      }
      return new OpenData(checks, kinds).of(data, ask, open.ideal(), find, profile);
    } else if (outcome instanceof Outcome.Contradictory contradictory) {
      return Unsolved.contradictory(data, ask, contradictory.first());
    }
    return Unsolved.none(
        data,
        ask,
        "the equations between the given values are too hard to be solved here",
        List.of());
  }

  /** Where e_1, …, e_n have one value each. */
  private Solution single(
      SymmetricData data,
      DataAskText ask,
      List<Rational> elementary,
      List<Warning> before,
      String find,
      ClassProfile profile)
      throws UnreadableException {
    Polynomial polynomial = data.polynomial(elementary);
    Problem problem = data.problem(polynomial, asked(data, ask));
    AskLimits.require(problem, find);
    for (GivenValue given : data.givens()) {
      checks.require(
          given.relation(),
          Claim.equal(problem.setting(), given.shown(), Formula.number(given.value())));
    }
    DataLines lines = DataLines.of(data, problem.setting(), NamedForm::elementary);
    List<MultivariatePolynomial> equations = Elimination.equations(data);
    Ideal.of(equations, data.count() + 1)
        .ifPresent(ideal -> lines.complete(elementary, equations, ideal));
    List<Warning> warnings = new ArrayList<>(before);
    warnings.addAll(DomainGate.warnings(data, polynomial));
    redundant(data).ifPresent(warnings::add);
    return ask instanceof DataAskText.ForPolynomial
        ? polynomialItself(data, problem, lines, warnings, elementary)
        : assembled(data, ask, problem, lines, warnings, elementary, profile);
  }

  private static Formula asked(SymmetricData data, DataAskText ask) {
    return ask instanceof DataAskText.ForExpression expression
        ? expression.formula()
        : ask instanceof DataAskText.ForNumbers
            ? new Formula.Application("roots", List.of())
            : new Formula.Application(
                "polynomial with roots", List.of(Formula.name(data.names().get(0))));
  }

  private Solution assembled(
      SymmetricData data,
      DataAskText ask,
      Problem problem,
      DataLines lines,
      List<Warning> warnings,
      List<Rational> elementary,
      ClassProfile profile) {
    Solution found = kinds.solve(problem, profile);
    found.warnings().stream()
        .filter(w -> w.code() != WarningCode.RATIONAL_ROOT && w.code() != WarningCode.REDUCIBLE)
        .forEach(warnings::add);
    if (ask instanceof DataAskText.ForExpression) {
      found.warnings().stream()
          .filter(w -> w.code() == WarningCode.RATIONAL_ROOT)
          .map(w -> new Warning(w.code(), guessed(w.text())))
          .forEach(warnings::add);
    }
    DataAsked asked = new DataAsked(data, elementary, AskedReader.read(problem));
    DataRoutes routes = new DataRoutes(asked, lines);
    List<Working> workings = new ArrayList<>();
    for (Working working : found.routes()) {
      Working here = routes.of(working);
      boolean said = workings.stream().anyMatch(other -> shown(other).equals(shown(here)));
      if (!said && confirmed(here)) {
        workings.add(here);
      }
    }
    workings.sort(Working.CHEAPEST_FIRST);
    SlipRunner.Slipped slipped = SlipRunner.run(DataSlip.ALL, asked, found.answer());
    List<Solution.WrongTurning> showing = new ArrayList<>(slipped.showing());
    found.slips().stream().filter(s -> SHARED_SLIPS.contains(s.name())).forEach(showing::add);
    List<Solution.SilentSlip> silent = new ArrayList<>(slipped.silent());
    found.silent().stream().filter(s -> SHARED_SLIPS.contains(s.name())).forEach(silent::add);
    return found
        .restated(
            ValuesOfNumbers.given(
                data, ask.shown(), PolynomialFormula.of(problem.polynomial(), problem.unknown())),
            statement(data, ask, problem.polynomial()))
        .withWarnings(warnings)
        .withRoutes(workings)
        .withSlips(new SlipRunner.Slipped(showing, silent));
  }

  private static List<Formula> shown(Working working) {
    return working.steps().stream().map(Step::shown).toList();
  }

  /** The sentence about rational roots, said of numbers. */
  private static String guessed(String text) {
    int verb = text.indexOf(" root");
    String values =
        text.substring(0, Math.max(0, text.indexOf(text.contains(" are ") ? " are " : " is ")));
    return verb < 0 ? text : "A student may guess some of the numbers: %s.".formatted(values);
  }

  private boolean confirmed(Working working) {
    for (Step step : working.steps()) {
      if (!step.isArgument()
          && checks.confirm("route " + working.route(), step.shown(), step.claim()).isEmpty()) {
        return false;
      }
    }
    return true;
  }

  private Solution polynomialItself(
      SymmetricData data,
      Problem problem,
      DataLines lines,
      List<Warning> warnings,
      List<Rational> elementary) {
    TreeSet<Integer> all = new TreeSet<>();
    for (int k = 1; k <= elementary.size(); k++) {
      all.add(k);
    }
    List<Step> steps = new ArrayList<>(lines.lines(all));
    steps.add(DataRoutes.polynomialLine(problem));
    Answer answer = new Answer.PolynomialIn(problem.polynomial(), problem.unknown());
    SecondOpinion second =
        checks.require(
            problem.ask(),
            new Claim.HasRoots(
                problem.setting(), problem.polynomial(), Formula.name(problem.roots().get(0))));
    Working working =
        Working.of(
            "newton-backwards",
            "find the elementary symmetric polynomials one by one",
            "Symmetric values of n numbers are the coefficients of their polynomial in disguise.",
            steps,
            answer);
    return Solution.of(
            "polynomial-of-numbers",
            ValuesOfNumbers.given(
                data,
                new Formula.Words("the polynomial"),
                PolynomialFormula.of(problem.polynomial(), problem.unknown())),
            statement(data, new DataAskText.ForPolynomial(), problem.polynomial()),
            answer,
            second)
        .withWarnings(warnings)
        .withRoutes(confirmed(working) ? List.of(working) : List.of());
  }

  /** The statement; a promise that the numbers do not keep is not repeated. */
  static String statement(SymmetricData data, DataAskText ask, Polynomial polynomial) {
    boolean promised = data.domain().map(d -> DomainGate.allows(d, polynomial)).orElse(false);
    boolean allReal = DomainGate.allows(NumberDomain.REAL, polynomial);
    NumberDomain domain =
        promised ? data.domain().orElseThrow() : allReal ? NumberDomain.REAL : NumberDomain.COMPLEX;
    return data.inWords(domain, true) + " " + wanted(data, ask);
  }

  /** The sentence that says what is asked. */
  static String wanted(SymmetricData data, DataAskText ask) {
    if (ask instanceof DataAskText.ForPolynomial) {
      return "Find the monic polynomial whose %s."
          .formatted(data.count() == 1 ? "root it is" : "roots they are");
    }
    return "Find " + UnicodeWriter.write(ask.shown()) + "." + meaning(data, ask);
  }

  /** What S_k or p_k stands for, if one of them occurs. */
  private static String meaning(SymmetricData data, DataAskText ask) {
    for (String letter : List.of("S", "p")) {
      Predicate<Formula> occurs =
          formula ->
              formula.contains(
                  part -> part instanceof Formula.Family family && family.letter().equals(letter));
      if (occurs.test(ask.shown())
          || data.givens().stream().anyMatch(given -> occurs.test(given.relation()))) {
        return " Here %sₖ is the sum of the k-th powers of the numbers.".formatted(letter);
      }
    }
    return "";
  }

  /** Values that follow from those before them are said to be so. */
  private static Optional<Warning> redundant(SymmetricData data) {
    List<MultivariatePolynomial> before = new ArrayList<>();
    for (GivenValue given : data.givens()) {
      boolean follows =
          !before.isEmpty()
              && Ideal.of(before, data.count())
                  .flatMap(ideal -> ideal.factors(given.equation()))
                  .isPresent();
      if (follows) {
        return Optional.of(
            new Warning(
                WarningCode.REDUNDANT,
                "More is given than is needed: %s follows from what stands before it."
                    .formatted(UnicodeWriter.write(given.relation()))));
      }
      before.add(given.equation());
    }
    return Optional.empty();
  }

  /** Where the data leave finitely many possibilities. */
  private Solution several(
      SymmetricData data,
      DataAskText ask,
      List<List<Rational>> cases,
      String find,
      ClassProfile profile)
      throws UnreadableException {
    List<List<Rational>> allowed =
        cases.stream()
            .filter(
                e ->
                    data.domain()
                        .map(domain -> DomainGate.allows(domain, data.polynomial(e)))
                        .orElse(true))
            .toList();
    if (allowed.size() == 1) {
      Warning thrown =
          new Warning(
              WarningCode.EXTRANEOUS,
              "The equations alone allow %d cases; only one of them is in %s."
                  .formatted(cases.size(), data.domain().orElseThrow().words()));
      return single(data, ask, allowed.get(0), List.of(thrown), find, profile);
    } else if (allowed.isEmpty()) {
      return Unsolved.none(
          data,
          ask,
          "no %s have these values".formatted(data.domain().orElseThrow().words()),
          List.of(
              new Warning(
                  WarningCode.NOT_REAL,
                  "The equations have solutions, but none of them in %s."
                      .formatted(data.domain().orElseThrow().words()))));
    }
    for (List<Rational> elementary : allowed) {
      AskLimits.require(data.problem(data.polynomial(elementary), asked(data, ask)), find);
    }
    return new SeveralCases(checks).of(data, ask, allowed);
  }
}
