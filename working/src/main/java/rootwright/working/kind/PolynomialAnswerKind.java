package rootwright.working.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.AskedReader;
import rootwright.working.check.exact.ImagePolynomial;
import rootwright.working.gate.PolynomialGate;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.problem.Problem;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;

/**
 * The polynomial whose roots are the images of an expression under renaming the roots: a
 * transformed polynomial, or the resolvent of an expression that is not symmetric.
 */
final class PolynomialAnswerKind implements Kind {

  private final String word;
  private final Optional<String> letter;
  private final Assembly assembly;
  private final TwoChecks checks;

  /**
   * @param word the ask word
   * @param letter the letter of the answer; absent for that of the given polynomial
   */
  PolynomialAnswerKind(String word, Optional<String> letter, Assembly assembly, TwoChecks checks) {
    this.word = word;
    this.letter = letter;
    this.assembly = assembly;
    this.checks = checks;
  }

  @Override
  public String name() {
    return word.replace(' ', '-');
  }

  @Override
  public boolean recognises(Problem problem) {
    return AskWords.argument(problem, word).isPresent();
  }

  @Override
  public Solution solve(Problem problem, ClassProfile profile) {
    Formula map = AskWords.argument(problem, word).orElseThrow();
    ImagePolynomial image = ImagePolynomial.of(map, problem.setting());
    if (image instanceof ImagePolynomial.Refused refused) {
      return BeyondLimits.refused(name(), problem.asking(map), refused.why(), refused.bySize());
    }
    List<Warning> warnings = new ArrayList<>(PolynomialGate.warnings(problem));
    if (image instanceof ImagePolynomial.None none) {
      Answer answer = new Answer.None(none.why());
      warnings.add(
          0,
          new Warning(
              WarningCode.ZERO_DENOMINATOR, "There is no such polynomial: " + none.why() + "."));
      return Assembly.withoutRoutes(
          name(),
          problem,
          new Findings(
              answer,
              answer,
              Optional.empty(),
              List.of(),
              warnings,
              SecondOpinion.NOTHING_TO_CHECK));
    }
    Polynomial polynomial = ((ImagePolynomial.Found) image).polynomial().primitive();
    if (!polynomial.isSquarefree() && problem.polynomial().isSquarefree()) {
      warnings.add(
          new Warning(
              WarningCode.REPEATED_ROOT,
              "Different roots have the same image, so the new polynomial has repeated roots."));
    }
    Answer answer = new Answer.PolynomialIn(polynomial, letter.orElse(problem.unknown()));
    Claim claim = new Claim.HasRoots(problem.setting(), polynomial, map);
    Findings findings =
        new Findings(
            answer,
            answer,
            Optional.empty(),
            List.of(),
            warnings,
            checks.require(problem.ask(), claim));
    return assembly
        .assemble(name(), AskedReader.read(problem.asking(map)), findings, profile)
        .asked(problem.ask(), StatementInWords.of(problem));
  }
}
