package rootwright.working.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.symmetric.Discriminant;
import rootwright.working.answer.Answer;
import rootwright.working.ask.AskedReader;
import rootwright.working.ask.DiscriminantMeaning;
import rootwright.working.gate.PolynomialGate;
import rootwright.working.gate.Warning;
import rootwright.working.problem.Problem;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;

/** The discriminant, a^(2n−2) times the product of the squared differences of the roots. */
final class DiscriminantKind implements Kind {

  private final Assembly assembly;
  private final TwoChecks checks;

  DiscriminantKind(Assembly assembly, TwoChecks checks) {
    this.assembly = assembly;
    this.checks = checks;
  }

  @Override
  public String name() {
    return "discriminant";
  }

  @Override
  public boolean recognises(Problem problem) {
    return AskWords.isWord(problem, "discriminant");
  }

  @Override
  public Solution solve(Problem problem, ClassProfile profile) {
    Rational value = Discriminant.of(problem.polynomial());
    Formula meaning = DiscriminantMeaning.of(problem);
    Claim claim = Claim.equal(problem.setting(), meaning, Formula.number(value));
    List<Warning> warnings = new ArrayList<>(PolynomialGate.warnings(problem));
    Findings findings =
        new Findings(
            Answer.exact(value),
            Answer.exact(value),
            Optional.empty(),
            List.of(),
            warnings,
            checks.require(problem.ask(), claim));
    return assembly
        .assemble(name(), AskedReader.read(problem.asking(meaning)), findings, profile)
        .asked(problem.ask(), StatementInWords.of(problem));
  }
}
