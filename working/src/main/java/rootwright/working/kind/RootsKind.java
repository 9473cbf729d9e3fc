package rootwright.working.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValues;
import rootwright.working.answer.Answer;
import rootwright.working.ask.AskedReader;
import rootwright.working.check.Verdict;
import rootwright.working.check.second.RootsCheck;
import rootwright.working.gate.PolynomialGate;
import rootwright.working.problem.Problem;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;

/** All roots, exactly. */
final class RootsKind implements Kind {

  private final Assembly assembly;

  RootsKind(Assembly assembly) {
    this.assembly = assembly;
  }

  @Override
  public String name() {
    return "roots";
  }

  @Override
  public boolean recognises(Problem problem) {
    return AskWords.isWord(problem, "roots");
  }

  @Override
  public Solution solve(Problem problem, ClassProfile profile) {
    List<ExactRoot> roots = ExactValues.rootsOf(problem.polynomial());
    Verdict verdict = RootsCheck.of(problem.polynomial(), roots);
    if (!(verdict instanceof Verdict.Confirmed confirmed)) {
      throw new CheckFailedException("the answer", problem.ask(), verdict.toString());
    }
    Answer answer = new Answer.Solutions(roots.stream().map(ExactRoot::value).toList());
    Findings findings =
        new Findings(
            answer,
            answer,
            Optional.empty(),
            List.of(),
            new ArrayList<>(PolynomialGate.warnings(problem)),
            SecondOpinion.of(confirmed));
    return assembly.assemble(name(), AskedReader.read(problem), findings, profile);
  }
}
