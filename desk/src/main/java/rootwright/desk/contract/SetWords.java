package rootwright.desk.contract;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.working.solve.Given;
import rootwright.working.solve.Solution;

/**
 * A sentence with its formulas set: an array of pieces, each either {@code {"text"}} alone or a
 * formula in all notations of a page.
 *
 * <p>The sentence is plain text. The formulas of the problem are looked for in it as they are
 * written there; what is not found stays text.
 */
final class SetWords {

  private static final Formula NOTHING = new Formula.Words("");

  private final Map<String, Formula> known = new LinkedHashMap<>();

  private SetWords(List<Formula> formulas) {
    formulas.stream()
        .filter(formula -> !(formula instanceof Formula.Words))
        .sorted(Comparator.comparing(formula -> -UnicodeWriter.write(formula).length()))
        .forEach(formula -> known.putIfAbsent(UnicodeWriter.write(formula), formula));
    known.remove("");
  }

  /** The statement of a solution. */
  static ArrayNode statement(Solution solution) {
    Given given = solution.given();
    List<Formula> formulas = new ArrayList<>();
    for (Formula polynomial : List.of(given.polynomial(), given.stated())) {
      formulas.add(polynomial);
      if (!(polynomial instanceof Formula.Relation) && !(polynomial instanceof Formula.Words)) {
        formulas.add(Formula.equation(polynomial, Formula.number(0)));
      }
    }
    formulas.add(given.find());
    formulas.addAll(given.conditions());
    given.roots().forEach(name -> formulas.add(Formula.name(name)));
    formulas.add(Formula.name(given.unknown()));
    return new SetWords(formulas).cut(solution.statement());
  }

  private ArrayNode cut(String sentence) {
    ArrayNode pieces = JsonNodeFactory.instance.arrayNode();
    StringBuilder words = new StringBuilder();
    int at = 0;
    while (at < sentence.length()) {
      String found = formulaAt(sentence, at);
      if (found.isEmpty()) {
        words.append(sentence.charAt(at++));
      } else {
        end(pieces, words);
        FormulaForms.FOR_PAGES.write(pieces.addObject(), known.getOrDefault(found, NOTHING));
        at += found.length();
      }
    }
    end(pieces, words);
    return pieces;
  }

  private static void end(ArrayNode pieces, StringBuilder words) {
    if (!words.isEmpty()) {
      pieces.addObject().put("text", words.toString());
      words.setLength(0);
    }
  }

  /** The longest formula that stands here and is no part of a word; empty if none does. */
  private String formulaAt(String sentence, int at) {
    if (at > 0 && isPartOfWord(sentence.charAt(at - 1))) {
      return "";
    }
    for (String written : known.keySet()) {
      int end = at + written.length();
      if (sentence.startsWith(written, at)
          && (end == sentence.length() || !isPartOfWord(sentence.charAt(end)))) {
        return written;
      }
    }
    return "";
  }

  private static boolean isPartOfWord(char c) {
    return Character.isLetterOrDigit(c) || c == '\'' || c == '’';
  }
}
