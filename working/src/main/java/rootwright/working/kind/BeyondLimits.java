package rootwright.working.kind;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.working.answer.Answer;
import rootwright.working.check.exact.Valuation;
import rootwright.working.problem.Problem;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;

/** What is said of an ask whose form or size is not worked: which part of it, and what would do. */
final class BeyondLimits {

  private static final String TOO_LARGE = "too-large";
  private static final String UNSUPPORTED = "unsupported";

  private BeyondLimits() {}

  /** The refusal of an ask of which the exact method could not find the value. */
  static Solution refused(String kind, Problem problem, String why, boolean bySize) {
    Formula part = culprit(problem, problem.ask());
    return solution(
        kind,
        problem,
        new Answer.Refused(bySize ? TOO_LARGE : UNSUPPORTED, why, part, mend(problem, part)));
  }

  /** The refusal of an ask that has another shape than its first word wants. */
  static Solution misshapen(String kind, Problem problem, String why) {
    return solution(
        kind, problem, new Answer.Refused(UNSUPPORTED, why, problem.ask(), Optional.empty()));
  }

  /** The refusal of an ask that would take too long, whatever part of it is to blame. */
  static Solution tooLarge(String kind, Problem problem, String why) {
    return solution(
        kind, problem, new Answer.Refused(TOO_LARGE, why, problem.ask(), Optional.empty()));
  }

  private static Solution solution(String kind, Problem problem, Answer.Refused refused) {
    return Assembly.withoutRoutes(
        kind,
        problem,
        new Findings(
            refused,
            refused,
            Optional.empty(),
            List.of(),
            List.of(),
            SecondOpinion.NOTHING_TO_CHECK));
  }

  /** The smallest part that cannot be valued by itself. */
  private static Formula culprit(Problem problem, Formula whole) {
    return whole.parts().stream()
        .filter(part -> isRefused(problem, part))
        .findFirst()
        .map(part -> culprit(problem, part))
        .orElse(whole);
  }

  /** The ask with something near in the place of the culprit, if that can be valued. */
  private static Optional<Formula> mend(Problem problem, Formula culprit) {
    return near(culprit)
        .map(near -> problem.ask().rewrite(part -> part.equals(culprit) ? near : part))
        .filter(changed -> !isRefused(problem, changed));
  }

  private static Optional<Formula> near(Formula culprit) {
    if (culprit instanceof Formula.Application application
        && application.function().equals("abs")) {
      return Optional.of(application.arguments().get(0).power(2));
    } else if (culprit instanceof Formula.Radical radical) {
      return Optional.of(radical.radicand());
    } else if (culprit instanceof Formula.Power power) {
      return Optional.of(power.base().power(2));
    } else if (culprit instanceof Formula.Family family) {
      return Optional.of(new Formula.Family(family.letter(), Formula.number(2)));
    } else if (culprit instanceof Formula.Product product) {
      return withoutConstants(product);
    }
    return Optional.empty();
  }

  /** Roots of numbers and i can be taken out of an ask and put back into its answer. */
  private static Optional<Formula> withoutConstants(Formula.Product product) {
    List<Formula> rest =
        product.factors().stream()
            .filter(
                factor ->
                    !(factor instanceof Formula.ImaginaryUnit)
                        && !(factor instanceof Formula.Radical))
            .toList();
    return rest.isEmpty() || rest.size() == product.factors().size()
        ? Optional.empty()
        : Optional.of(Formula.product(rest));
  }

  private static boolean isRefused(Problem problem, Formula formula) {
    return Valuation.of(formula, problem.setting()) instanceof Valuation.Refused;
  }
}
