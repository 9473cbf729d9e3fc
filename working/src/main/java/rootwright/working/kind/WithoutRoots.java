package rootwright.working.kind;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.problem.Problem;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;

/** A polynomial without roots, or with every number as a root: nothing can be asked of it. */
final class WithoutRoots {

  private WithoutRoots() {}

  static Solution solution(Problem problem) {
    boolean zero = problem.polynomial().isZero();
    String why =
        zero
            ? "every number is a root of the zero polynomial"
            : "the constant %s has no roots".formatted(UnicodeWriter.write(problem.stated()));
    Answer answer = new Answer.None(why);
    Warning warning =
        new Warning(
            WarningCode.LEAD_ZERO,
            "Nothing can be asked of the roots: "
                + why
                + ". Give a polynomial of degree 1 or more.");
    return Assembly.withoutRoutes(
        "value",
        problem,
        new Findings(
            answer,
            answer,
            Optional.empty(),
            List.of(),
            List.of(warning),
            SecondOpinion.NOTHING_TO_CHECK));
  }
}
