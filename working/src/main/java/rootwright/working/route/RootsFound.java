package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.working.answer.Answer;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;

/** Roots that have been found so far, and how a working of them ends. */
final class RootsFound {

  private final List<ExactValue> values = new ArrayList<>();

  void addAll(List<ExactValue> found) {
    values.addAll(found);
  }

  /** The distinct roots in the order of a list of solutions. */
  Attempt worked(String title, Lines lines) {
    List<ExactValue> ordered = values.stream().distinct().sorted(ExactValues.order()).toList();
    return new Attempt.Worked(title, lines.steps(), new Answer.Solutions(ordered), List.of());
  }

  /**
   * Writes P as a product.
   *
   * @param content the number in front
   * @param factors the factors, with repetitions beside each other
   */
  static void product(
      Lines lines, Problem problem, String reason, Rational content, List<Polynomial> factors) {
    String x = problem.unknown();
    List<Formula> written = new ArrayList<>(List.of(Formula.number(content)));
    for (Polynomial factor : factors.stream().distinct().toList()) {
      int times = (int) factors.stream().filter(factor::equals).count();
      written.add(Combination.power(PolynomialFormula.of(factor, x), times));
    }
    lines
        .in(problem.setting().withFree(x))
        .add(
            Idea.RATIONAL_ROOT,
            reason,
            new Formula.Application("P", List.of(Formula.name(x))),
            Combination.product(written));
  }
}
