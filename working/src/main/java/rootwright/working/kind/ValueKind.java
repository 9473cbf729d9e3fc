package rootwright.working.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.ask.AskedReader;
import rootwright.working.check.exact.Valuation;
import rootwright.working.check.second.EnclosedValues;
import rootwright.working.gate.AskGate;
import rootwright.working.gate.PolynomialGate;
import rootwright.working.gate.Warning;
import rootwright.working.problem.Problem;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;

/** The value of an expression in the roots. */
final class ValueKind implements Kind {

  /** Largest orbit whose polynomial is factored to name the values. */
  private static final int LARGEST_FACTORED = 24;

  /** Enclosures prove what they hold; there is no exact claim that could be checked twice. */
  private static final SecondOpinion ENCLOSED =
      SecondOpinion.by("certified enclosures of the values alone");

  private final Assembly assembly;
  private final TwoChecks checks;

  ValueKind(Assembly assembly, TwoChecks checks) {
    this.assembly = assembly;
    this.checks = checks;
  }

  @Override
  public String name() {
    return "value";
  }

  @Override
  public boolean recognises(Problem problem) {
    return true;
  }

  @Override
  public Solution solve(Problem problem, ClassProfile profile) {
    Valuation valuation = Valuation.of(problem.ask(), problem.setting());
    if (valuation instanceof Valuation.Refused refused) {
      return BeyondLimits.refused(name(), problem, refused.why(), refused.bySize());
    }
    List<Warning> warnings = new ArrayList<>(AskGate.warnings(problem, valuation));
    warnings.addAll(PolynomialGate.warnings(problem));
    Asked asked = AskedReader.read(problem, valuation);
    Optional<Findings> findings = findings(problem, valuation, warnings, asked);
    return findings.isPresent()
        ? assembly.assemble(name(), asked, findings.get(), profile)
        : Assembly.withoutRoutes(name(), problem, none(valuation, warnings));
  }

  private Optional<Findings> findings(
      Problem problem, Valuation valuation, List<Warning> warnings, Asked asked) {
    List<String> conditions = AskGate.conditions(problem, asked);
    if (valuation instanceof Valuation.Determined determined) {
      Answer answer = Answer.exact(determined.value());
      Optional<Solution.Reduced> reduced =
          asked
              .singleRoot()
              .map(
                  f ->
                      new Solution.Reduced(
                          Polynomial.constant(determined.value()), oneName(problem)));
      Claim claim =
          Claim.equal(problem.setting(), problem.ask(), Formula.number(determined.value()));
      return Optional.of(
          new Findings(
              answer, answer, reduced, conditions, warnings, checks.require(problem.ask(), claim)));
    } else if (valuation instanceof Valuation.InOneRoot one) {
      Polynomial values = ResidueAlgebra.of(problem.polynomial()).characteristic(one.reduced());
      if (AskGate.isSingle(one, problem)) {
        return Optional.of(single(problem, one, warnings));
      }
      Claim claim =
          Claim.equal(
              problem.setting(), problem.ask(), PolynomialFormula.of(one.reduced(), one.root()));
      // Routes for one root end in the polynomial of lower degree, all others in the values.
      Answer answer = new Answer.Values(named(values), values.primitive());
      return Optional.of(
          new Findings(
              answer,
              asked.singleRoot().isPresent()
                  ? new Answer.PolynomialIn(one.reduced(), one.root())
                  : answer,
              Optional.of(new Solution.Reduced(one.reduced(), one.root())),
              conditions,
              warnings,
              checks.require(problem.ask(), claim)));
    } else if (valuation instanceof Valuation.Several several) {
      Answer answer =
          new Answer.Values(named(several.orbit()), several.orbit().squarefreePart().primitive());
      Claim claim = new Claim.HasRoots(problem.setting(), several.orbit(), problem.ask());
      return Optional.of(
          new Findings(
              answer,
              answer,
              Optional.empty(),
              conditions,
              warnings,
              checks.require(problem.ask(), claim)));
    } else if (valuation instanceof Valuation.TooMany many) {
      Answer answer =
          new Answer.Enclosed(many.images(), EnclosedValues.of(problem.ask(), problem.setting()));
      return Optional.of(
          new Findings(answer, answer, Optional.empty(), conditions, warnings, ENCLOSED));
    }
    return Optional.empty();
  }

  /** Repeated roots may leave an expression in one root a single value: 2r at (x − 1)² is 2. */
  private Findings single(Problem problem, Valuation.InOneRoot one, List<Warning> warnings) {
    Rational value = one.reduced().remainder(problem.polynomial().squarefreePart()).coefficient(0);
    Answer answer = Answer.exact(value);
    Claim claim = Claim.equal(problem.setting(), problem.ask(), Formula.number(value));
    return new Findings(
        answer,
        new Answer.PolynomialIn(one.reduced(), one.root()),
        Optional.of(new Solution.Reduced(one.reduced(), one.root())),
        List.of(),
        warnings,
        checks.require(problem.ask(), claim));
  }

  private static Findings none(Valuation valuation, List<Warning> warnings) {
    String why = ((Valuation.Undefined) valuation).why();
    Answer answer = new Answer.None(why);
    return new Findings(
        answer, answer, Optional.empty(), List.of(), warnings, SecondOpinion.NOTHING_TO_CHECK);
  }

  /** The distinct roots of a polynomial, unless it is too long to be worth naming them. */
  private static List<ExactValue> named(Polynomial values) {
    return values.degree() > LARGEST_FACTORED
        ? List.of()
        : ExactValues.rootsOf(values).stream().map(ExactRoot::value).distinct().toList();
  }

  private static String oneName(Problem problem) {
    return problem.roots().stream()
        .filter(
            root ->
                problem
                    .ask()
                    .contains(
                        part -> part instanceof Formula.Name name && name.spelling().equals(root)))
        .findFirst()
        .orElse(problem.roots().get(0));
  }
}
