package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.real.SturmSequence;
import rootwright.algebra.symmetric.Discriminant;
import rootwright.composing.family.Families;
import rootwright.working.gate.WarningCode;
import rootwright.working.problem.Problem;
import rootwright.working.solve.Solution;

/** Finds the conditions that a statement needs, and settles each of them. */
final class Conditions {

  /** Warnings that say what became of a condition that a reader may miss. */
  private static final Set<WarningCode> SETTLED =
      EnumSet.of(WarningCode.EXTRANEOUS, WarningCode.LEAD_ZERO);

  private Conditions() {}

  /**
   * Distinct, not zero, real: each either stands in the statement or is shown to be superfluous.
   */
  static List<Condition> of(Solution solution) {
    List<Condition> found = new ArrayList<>();
    Optional<Problem> problem = solution.given().problem();
    problem.map(Conditions::distinct).ifPresent(found::add);
    for (String denominator : solution.conditions()) {
      found.add(
          new Condition(
              problem.isPresent() && solution.kind().equals(Families.VALUE)
                  ? "no denominator is zero"
                  : "what the ask needs",
              Condition.Standing.SUPERFLUOUS,
              denominator));
    }
    for (Formula said : solution.given().conditions()) {
      found.add(
          new Condition(
              UnicodeWriter.write(said), Condition.Standing.PUT_IN, "the statement says so"));
    }
    problem.map(read -> real(read, solution)).ifPresent(found::add);
    if (problem.isEmpty()
        && solution.warnings().stream()
            .anyMatch(warning -> warning.code() == WarningCode.DOMAIN_OPEN)) {
      found.add(
          new Condition(
              "what numbers are meant",
              Condition.Standing.PUT_IN,
              "the statement says which; with others the answer would be another"));
    }
    solution.warnings().stream()
        .filter(warning -> SETTLED.contains(warning.code()))
        .forEach(
            warning ->
                found.add(
                    new Condition(
                        "what counts as a solution", Condition.Standing.PUT_IN, warning.text())));
    return List.copyOf(found);
  }

  private static Condition distinct(Problem problem) {
    return problem.polynomial().isSquarefree()
        ? new Condition(
            "distinct roots",
            Condition.Standing.SUPERFLUOUS,
            "the discriminant is "
                + UnicodeWriter.write(Formula.number(Discriminant.of(problem.polynomial())))
                + ", not 0")
        : new Condition(
            "repeated roots",
            Condition.Standing.PUT_IN,
            "the statement says that roots are counted with multiplicity");
  }

  private static Condition real(Problem problem, Solution solution) {
    int distinct = SturmSequence.of(problem.polynomial()).count();
    if (solution.kind().equals("real-roots")) {
      return new Condition("real", Condition.Standing.PUT_IN, "the ask is for the real roots");
    }
    return problem.polynomial().isSquarefree() && distinct == problem.degree()
        ? new Condition("real roots", Condition.Standing.SUPERFLUOUS, "all roots are real by Sturm")
        : new Condition(
            "complex roots",
            Condition.Standing.PUT_IN,
            "the statement says complex roots; by Sturm %d of them %s real"
                .formatted(distinct, distinct == 1 ? "is" : "are"));
  }
}
