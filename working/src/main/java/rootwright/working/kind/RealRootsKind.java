package rootwright.working.kind;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.real.SturmSequence;
import rootwright.working.answer.Answer;
import rootwright.working.ask.AskedReader;
import rootwright.working.check.second.RealRootCount;
import rootwright.working.gate.PolynomialGate;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.problem.Problem;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;

/** How many distinct real roots there are. */
final class RealRootsKind implements Kind {

  private static final String WORD = "real roots";

  private final Assembly assembly;

  RealRootsKind(Assembly assembly) {
    this.assembly = assembly;
  }

  @Override
  public String name() {
    return "real-roots";
  }

  @Override
  public boolean recognises(Problem problem) {
    return AskWords.isWord(problem, WORD);
  }

  @Override
  public Solution solve(Problem problem, ClassProfile profile) {
    int distinct = SturmSequence.of(problem.polynomial()).count();
    RealRootCount enclosed = RealRootCount.of(problem.polynomial());
    if (enclosed.distinct() != distinct) {
      throw new CheckFailedException(
          "the answer",
          problem.ask(),
          "Sturm counts %d real roots, the enclosures %d".formatted(distinct, enclosed.distinct()));
    }
    List<Warning> warnings = new ArrayList<>(PolynomialGate.warnings(problem));
    if (enclosed.withMultiplicity() != distinct) {
      warnings.add(
          0,
          new Warning(
              WarningCode.DOMAIN_OPEN,
              "Counted with multiplicity there are %d real roots, %d of them distinct; say which is meant."
                  .formatted(enclosed.withMultiplicity(), distinct)));
    }
    Answer answer = new Answer.Count(BigInteger.valueOf(distinct));
    Findings findings =
        new Findings(
            answer,
            answer,
            Optional.empty(),
            List.of(),
            warnings,
            new SecondOpinion(
                "real discs among certified enclosures of all roots",
                true,
                java.util.OptionalInt.empty()));
    return assembly.assemble(name(), AskedReader.read(problem), findings, profile);
  }
}
