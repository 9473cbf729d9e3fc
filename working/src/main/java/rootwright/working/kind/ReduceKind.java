package rootwright.working.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.ask.AskedReader;
import rootwright.working.check.exact.Valuation;
import rootwright.working.gate.AskGate;
import rootwright.working.gate.PolynomialGate;
import rootwright.working.gate.Warning;
import rootwright.working.problem.Problem;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;

/** The polynomial of lower degree in one root that an expression in that root equals. */
final class ReduceKind implements Kind {

  private static final String WORD = "reduce";

  private final Assembly assembly;
  private final TwoChecks checks;

  ReduceKind(Assembly assembly, TwoChecks checks) {
    this.assembly = assembly;
    this.checks = checks;
  }

  @Override
  public String name() {
    return WORD;
  }

  @Override
  public boolean recognises(Problem problem) {
    return AskWords.argument(problem, WORD).isPresent();
  }

  @Override
  public Solution solve(Problem problem, ClassProfile profile) {
    Formula expression = AskWords.argument(problem, WORD).orElseThrow();
    Problem inside = problem.asking(expression);
    Asked asked = AskedReader.read(inside);
    Valuation valuation = Valuation.of(expression, problem.setting());
    List<Warning> warnings = new ArrayList<>();
    Polynomial reduced;
    String root = asked.singleRootName().orElse(problem.roots().get(0));
    if (valuation instanceof Valuation.InOneRoot one) {
      reduced = one.reduced();
      root = one.root();
    } else if (valuation instanceof Valuation.Determined determined) {
      reduced = Polynomial.constant(determined.value());
    } else if (valuation instanceof Valuation.Refused refused) {
      return BeyondLimits.refused(name(), inside, refused.why(), refused.bySize());
    } else if (!(valuation instanceof Valuation.Undefined undefined)) {
      return BeyondLimits.misshapen(
          name(), problem, "only an expression in one root can be reduced");
    } else {
      warnings.addAll(AskGate.warnings(inside, valuation));
      Answer none = new Answer.None(undefined.why());
      return Assembly.withoutRoutes(
          name(),
          problem,
          new Findings(
              none, none, Optional.empty(), List.of(), warnings, SecondOpinion.NOTHING_TO_CHECK));
    }
    warnings.addAll(PolynomialGate.warnings(problem));
    Answer answer = new Answer.PolynomialIn(reduced, root);
    Answer goal = reduced.degree() <= 0 ? Answer.exact(reduced.coefficient(0)) : answer;
    Claim claim = Claim.equal(problem.setting(), expression, PolynomialFormula.of(reduced, root));
    Findings findings =
        new Findings(
            answer,
            goal,
            Optional.of(new Solution.Reduced(reduced, root)),
            AskGate.conditions(inside, asked),
            warnings,
            checks.require(problem.ask(), claim));
    return assembly
        .assemble(name(), asked, findings, profile)
        .asked(problem.ask(), StatementInWords.of(problem));
  }
}
