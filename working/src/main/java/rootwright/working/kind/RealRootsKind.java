package rootwright.working.kind;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.real.SturmSequence;
import rootwright.working.answer.Answer;
import rootwright.working.ask.AskedReader;
import rootwright.working.ask.RealRange;
import rootwright.working.check.second.RealRootCount;
import rootwright.working.gate.PolynomialGate;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.problem.Problem;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;

/** How many distinct real roots there are, or how many of one sign. */
final class RealRootsKind implements Kind {

  private final RealRange range;
  private final Assembly assembly;

  RealRootsKind(RealRange range, Assembly assembly) {
    this.range = range;
    this.assembly = assembly;
  }

  @Override
  public String name() {
    return range.word().replace(' ', '-');
  }

  @Override
  public boolean recognises(Problem problem) {
    return AskWords.isWord(problem, range.word());
  }

  @Override
  public Solution solve(Problem problem, ClassProfile profile) {
    int distinct = counted(problem.polynomial());
    RealRootCount enclosed = enclosed(problem.polynomial());
    if (enclosed.distinct() != distinct) {
      throw new CheckFailedException(
          "the answer",
          problem.ask(),
          "Sturm counts %d %s roots, the enclosures %d"
              .formatted(distinct, range.adjective(), enclosed.distinct()));
    }
    List<Warning> warnings = new ArrayList<>(PolynomialGate.warnings(problem));
    if (enclosed.withMultiplicity() != distinct) {
      warnings.add(
          0,
          new Warning(
              WarningCode.DOMAIN_OPEN,
              "Counted with multiplicity there are %d %s roots, %d of them distinct; say which is meant."
                  .formatted(enclosed.withMultiplicity(), range.adjective(), distinct)));
    }
    Answer answer = new Answer.Count(BigInteger.valueOf(distinct));
    Findings findings =
        new Findings(
            answer,
            answer,
            Optional.empty(),
            List.of(),
            warnings,
            SecondOpinion.by("real discs among certified enclosures of all roots"));
    return assembly.assemble(name(), AskedReader.read(problem), findings, profile);
  }

  private int counted(Polynomial polynomial) {
    SturmSequence sturm = SturmSequence.of(polynomial);
    return switch (range) {
      case ALL -> sturm.count();
      case POSITIVE -> sturm.countAbove(Rational.ZERO);
      case NEGATIVE ->
          sturm.countUpTo(Rational.ZERO) - (polynomial.coefficient(0).isZero() ? 1 : 0);
    };
  }

  private RealRootCount enclosed(Polynomial polynomial) {
    return switch (range) {
      case ALL -> RealRootCount.of(polynomial);
      case POSITIVE -> RealRootCount.positive(polynomial);
      case NEGATIVE -> RealRootCount.positive(polynomial.compose(Polynomial.X.negate()));
    };
  }
}
