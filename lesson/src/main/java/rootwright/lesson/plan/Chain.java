package rootwright.lesson.plan;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.Formula.Comparison;
import rootwright.working.step.Claim;
import rootwright.working.step.Step;

/** Lines of the form S₂ = e₁S₁ − 2e₂ = 3·3 − 1 = 8: a formula, then the numbers. */
final class Chain {

  private Chain() {}

  /** The formula, and the same with numbers; empty for any other line. */
  static List<Formula> parts(Step step) {
    if (step.claim() instanceof Claim.Equal
        && step.shown() instanceof Formula.Relation relation
        && relation.sides().size() >= 3
        && relation.comparisons().stream().allMatch(Comparison.EQUAL::equals)
        && isFormula(relation.sides().get(1))
        && relation.sides().stream().skip(2).noneMatch(side -> side.contains(Chain::isLetter))) {
      Formula first = relation.sides().get(0);
      List<Formula> numbers = new ArrayList<>(relation.sides());
      numbers.remove(1);
      return List.of(
          Formula.equation(first, relation.sides().get(1)),
          Formula.equation(numbers.toArray(Formula[]::new)));
    }
    return List.of();
  }

  /** Something into which numbers are put. */
  private static boolean isFormula(Formula side) {
    return side instanceof Formula.Sum && side.contains(Formula.Family.class::isInstance);
  }

  private static boolean isLetter(Formula part) {
    return part instanceof Formula.Family || part instanceof Formula.Name;
  }
}
