package rootwright.working.values;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.problem.Problem;
import rootwright.working.route.Working;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/**
 * A working on the roots of a polynomial, as a working on numbers with given values: what the
 * coefficients gave comes from the data instead, and the polynomial is built first where it is
 * used.
 */
final class DataRoutes {

  /** Ideas that need e_1, e_2, … only, and no polynomial. */
  private static final Set<Idea> WITHOUT_POLYNOMIAL =
      EnumSet.of(
          Idea.READ_COEFFICIENTS,
          Idea.ARITHMETIC,
          Idea.STATE,
          Idea.EXPAND,
          Idea.BUILD,
          Idea.NEWTON,
          Idea.RECURRENCE,
          Idea.COMMON_DENOMINATOR,
          Idea.SUM_OVER_ROOTS);

  private final DataAsked asked;
  private final DataLines data;

  DataRoutes(DataAsked asked, DataLines data) {
    this.asked = asked;
    this.data = data;
  }

  /** The working with the lines about the data in front. */
  Working of(Working working) {
    List<Step> kept = new ArrayList<>();
    for (Step step : working.steps()) {
      if (!isReadOff(step) && !isGivenAgain(step)) {
        kept.add(step);
      }
    }
    boolean needsPolynomial =
        kept.stream().anyMatch(step -> !WITHOUT_POLYNOMIAL.contains(step.idea()));
    SortedSet<Integer> wanted = new TreeSet<>();
    for (int k = 1; k <= asked.data().count(); k++) {
      Formula e = new Formula.Family("e", Formula.number(k));
      if (needsPolynomial
          || working.steps().stream()
              .anyMatch(
                  step ->
                      (kept.contains(step) || kept.isEmpty())
                          && step.shown().contains(e::equals))) {
        wanted.add(k);
      }
    }
    List<Step> steps = new ArrayList<>(data.lines(wanted));
    if (needsPolynomial) {
      steps.add(polynomialLine(asked.problem()));
    }
    steps.addAll(kept);
    if (kept.isEmpty()) {
      steps.addAll(lastReadOff(working));
    }
    return working
        .withTitle(kept.isEmpty() ? "the given values lead to it directly" : working.title())
        .withSteps(steps);
  }

  /** The numbers are the roots of a polynomial: the converse of Viète's formulas. */
  static Step polynomialLine(Problem problem) {
    Formula equation =
        Formula.equation(
            PolynomialFormula.of(problem.polynomial(), problem.unknown()), Formula.number(0));
    return new Step(
        equation,
        "its roots are %s: the signs of the e's alternate"
            .formatted(
                String.join(
                    ", ",
                    problem.roots().stream()
                        .map(root -> UnicodeWriter.write(Formula.name(root)))
                        .toList())),
        Idea.VANISHING,
        new Claim.HasRoots(
            problem.setting(), problem.polynomial(), Formula.name(problem.roots().get(0))));
  }

  /** Coefficients are not read here; they come from the data. */
  private static boolean isReadOff(Step step) {
    return step.idea() == Idea.READ_COEFFICIENTS;
  }

  /** Working out again what is given: S_2 = … where S_2 is among the data. */
  private boolean isGivenAgain(Step step) {
    if (step.idea() != Idea.NEWTON || step.shown().parts().isEmpty()) {
      return false;
    }
    Formula first = step.shown().parts().get(0);
    return first instanceof Formula.Family family
        && family.index() instanceof Formula.Numeral index
        && index.value().compareTo(Rational.of(1_000)) < 0
        && asked.givenPowerSum(index.value().intValueExact()).isPresent();
  }

  /** What is asked is one of the e's: say its value. */
  private List<Step> lastReadOff(Working working) {
    Formula ask = asked.problem().ask();
    for (Step step : working.steps()) {
      for (int k = 1; k <= asked.data().count(); k++) {
        Formula e = new Formula.Family("e", Formula.number(k));
        if (step.shown().parts().contains(e)
            && working.answer() instanceof Answer.Exact exact
            && exact.value().equals(new RationalValue(asked.elementary().get(k - 1)))) {
          return List.of(
              Step.equation(
                  asked.problem().setting(),
                  Idea.STATE,
                  "what is asked",
                  ask,
                  Formula.number(asked.elementary().get(k - 1))));
        }
      }
    }
    return List.of(working.steps().get(working.steps().size() - 1));
  }
}
