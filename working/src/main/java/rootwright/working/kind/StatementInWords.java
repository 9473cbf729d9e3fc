package rootwright.working.kind;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.working.problem.Problem;

/** The problem as a sheet would print it. */
final class StatementInWords {

  private StatementInWords() {}

  /** Two sentences: what the names mean, and what to find. */
  static String of(Problem problem) {
    Formula equation =
        Formula.equation(
            PolynomialFormula.of(problem.polynomial(), problem.unknown()), Formula.number(0));
    List<String> names =
        problem.roots().stream().map(name -> UnicodeWriter.write(Formula.name(name))).toList();
    String roots =
        names.size() == 1
            ? "Let %s be the root of %s.".formatted(names.get(0), UnicodeWriter.write(equation))
            : "Let %s be the roots of %s, complex roots counted with multiplicity."
                .formatted(String.join(", ", names), UnicodeWriter.write(equation));
    return roots + " " + wanted(problem.ask());
  }

  private static String wanted(Formula ask) {
    if (ask instanceof Formula.Application word && word.arguments().isEmpty()) {
      return switch (word.function()) {
        case "real roots", "positive roots", "negative roots" ->
            "How many different %s are there?".formatted(word.function());
        case "all roots real" -> "Are all roots real?";
        default -> "Find the %s.".formatted(word.function());
      };
    }
    return "Find " + UnicodeWriter.write(ask) + ".";
  }
}
