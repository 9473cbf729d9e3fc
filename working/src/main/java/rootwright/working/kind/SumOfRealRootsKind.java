package rootwright.working.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.value.ExactValue;
import rootwright.working.answer.Answer;
import rootwright.working.ask.AskedReader;
import rootwright.working.ask.RealRootSum;
import rootwright.working.check.Verdict;
import rootwright.working.check.second.RealRootTotal;
import rootwright.working.gate.PolynomialGate;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.problem.Problem;
import rootwright.working.problem.RootFunction;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;

/** The sum of f(r) over the real roots alone: “sum of the real roots”. */
final class SumOfRealRootsKind implements Kind {

  private final Assembly assembly;

  SumOfRealRootsKind(Assembly assembly) {
    this.assembly = assembly;
  }

  @Override
  public String name() {
    return "sum-of-real-roots";
  }

  @Override
  public boolean recognises(Problem problem) {
    return RealRootSum.of(problem).isPresent();
  }

  @Override
  public Solution solve(Problem problem, ClassProfile profile) {
    RootFunction f = RealRootSum.of(problem).orElseThrow();
    List<Warning> warnings = new ArrayList<>(PolynomialGate.warnings(problem));
    SumOverRealRoots sum = SumOverRealRoots.of(problem.polynomial(), f);
    if (sum instanceof SumOverRealRoots.Unsaid unsaid) {
      Answer none = new Answer.None(unsaid.why());
      return Assembly.withoutRoutes(
          name(),
          problem,
          new Findings(
              none, none, Optional.empty(), List.of(), warnings, SecondOpinion.NOTHING_TO_CHECK));
    }
    SumOverRealRoots.Found found = (SumOverRealRoots.Found) sum;
    ExactValue value = found.value();
    Verdict verdict = RealRootTotal.of(problem.polynomial(), f, value);
    if (!(verdict instanceof Verdict.Confirmed confirmed)) {
      throw new CheckFailedException("the answer", problem.ask(), verdict.toString());
    }
    if (found.real() == 0) {
      warnings.add(
          0,
          new Warning(WarningCode.NOT_REAL, "No root is real, so this is a sum of no terms: 0."));
    }
    Answer answer = new Answer.Exact(value);
    Findings findings =
        new Findings(
            answer, answer, Optional.empty(), List.of(), warnings, SecondOpinion.of(confirmed));
    return assembly.assemble(name(), AskedReader.read(problem), findings, profile);
  }
}
