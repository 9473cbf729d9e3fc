package rootwright.working.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.real.SturmSequence;
import rootwright.working.answer.Answer;
import rootwright.working.ask.AskedReader;
import rootwright.working.check.second.RealRootCount;
import rootwright.working.gate.PolynomialGate;
import rootwright.working.problem.Problem;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;

/** Whether all roots are real. */
final class AllRealKind implements Kind {

  private static final String WORD = "all roots real";

  private final Assembly assembly;

  AllRealKind(Assembly assembly) {
    this.assembly = assembly;
  }

  @Override
  public String name() {
    return "all-roots-real";
  }

  @Override
  public boolean recognises(Problem problem) {
    return AskWords.isWord(problem, WORD);
  }

  @Override
  public Solution solve(Problem problem, ClassProfile profile) {
    SturmSequence sturm = SturmSequence.of(problem.polynomial());
    boolean allReal = sturm.count() == sturm.members().get(0).degree();
    int enclosed = RealRootCount.of(problem.polynomial()).withMultiplicity();
    if (allReal != (enclosed == problem.degree())) {
      throw new CheckFailedException(
          "the answer",
          problem.ask(),
          "Sturm says %s, the enclosures show %d real roots".formatted(allReal, enclosed));
    }
    Answer answer = new Answer.Truth(allReal);
    Findings findings =
        new Findings(
            answer,
            answer,
            Optional.empty(),
            List.of(),
            new ArrayList<>(PolynomialGate.warnings(problem)),
            SecondOpinion.by("real discs among certified enclosures of all roots"));
    return assembly.assemble(name(), AskedReader.read(problem), findings, profile);
  }
}
