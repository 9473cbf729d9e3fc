package rootwright.working.kind;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Forms;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.SpokenWriter;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.working.problem.Problem;

/** The problem as a sheet would print it. */
final class StatementInWords {

  /** More new roots are described, not listed. */
  private static final int MOST_LISTED = 6;

  private StatementInWords() {}

  /** What the names mean, what to find, and what doubtful signs stand for. */
  static String of(Problem problem) {
    String equation =
        written(
            Formula.equation(
                PolynomialFormula.of(problem.polynomial(), problem.unknown()), Formula.number(0)));
    if (problem.ask() instanceof Formula.Application word && word.arguments().isEmpty()) {
      return switch (word.function()) {
        case "roots" -> "Find all roots of %s.".formatted(equation);
        case "real roots", "positive roots", "negative roots" ->
            "How many different %s does %s have?".formatted(word.function(), equation);
        case "all roots real" -> "Are all roots of %s real?".formatted(equation);
        default -> "Find the %s of %s.".formatted(word.function(), equation);
      };
    }
    return names(problem, equation) + wanted(problem) + meanings(problem);
  }

  private static String names(Problem problem, String equation) {
    List<String> names = problem.roots().stream().map(name -> written(Formula.name(name))).toList();
    if (names.isEmpty()) {
      return "Take the roots of %s. ".formatted(equation);
    }
    return names.size() == 1
        ? "Let %s be the root of %s. ".formatted(names.get(0), equation)
        : "Let %s be the roots of %s, complex roots counted with multiplicity. "
            .formatted(String.join(", ", names), equation);
  }

  private static String wanted(Problem problem) {
    if (problem.ask() instanceof Formula.Application application
        && application.arguments().size() == 1) {
      String inside = written(application.arguments().get(0));
      return switch (application.function()) {
        case "reduce" ->
            "Write %s as a polynomial of degree at most %d in the same root."
                .formatted(inside, Math.max(0, problem.degree() - 1));
        case "resolvent" ->
            "Find the polynomial in T whose roots are the values that %s takes when the roots are renamed in all ways."
                .formatted(inside);
        case "polynomial with roots" ->
            Forms.of(application.arguments().get(0), problem.roots())
                .filter(forms -> forms.size() <= MOST_LISTED)
                .map(StatementInWords::listed)
                .orElse(
                    "Find the polynomial whose roots are all values that %s takes when the roots are renamed."
                        .formatted(inside));
        default -> find(problem.ask());
      };
    }
    return find(problem.ask());
  }

  private static String listed(List<Formula> roots) {
    List<String> written = roots.stream().map(StatementInWords::written).toList();
    return written.size() == 1
        ? "Find the polynomial whose root is %s.".formatted(written.get(0))
        : "Find the polynomial whose roots are %s.".formatted(String.join(", ", written));
  }

  private static String find(Formula ask) {
    boolean inWords =
        ask.contains(
            part ->
                part instanceof Formula.Application word && word.function().equals("real roots"));
    if (inWords) {
      return "Find " + SpokenWriter.write(ask) + ".";
    }
    return "Find " + written(ask) + ".";
  }

  /** What the letters with an index stand for, said once for each letter that occurs. */
  private static String meanings(Problem problem) {
    Map<String, String> meanings = new LinkedHashMap<>();
    meanings.put("S", "Sₖ is the sum of the k-th powers of the roots");
    meanings.put("p", "pₖ is the sum of the k-th powers of the roots");
    meanings.put("e", "eₖ is the sum of all products of k of the roots");
    meanings.put("h", "hₖ is the sum of all products of k factors, each one of the roots");
    List<String> said =
        meanings.entrySet().stream()
            .filter(meaning -> occurs(meaning.getKey(), problem.ask()))
            .map(Map.Entry::getValue)
            .toList();
    return said.isEmpty() ? "" : " Here " + String.join(", and ", said) + ".";
  }

  private static boolean occurs(String letter, Formula ask) {
    return ask.contains(
        part -> part instanceof Formula.Family family && family.letter().equals(letter));
  }

  private static String written(Formula formula) {
    return UnicodeWriter.write(formula);
  }
}
