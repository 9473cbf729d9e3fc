package rootwright.press.deliverable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.press.document.Piece;
import rootwright.press.prose.PlainText;
import rootwright.working.solve.Given;
import rootwright.working.solve.Solution;

/**
 * The statement of a solution with its formulas set.
 *
 * <p>The statement is plain text. The formulas of the problem are looked for in it as they are
 * written there, then other formulas; what is not found stays text, so that nothing is ever left
 * out.
 */
public final class StatementPieces {

  /** An ask in words, such as the sum of the real roots, is no formula. */
  private static final Pattern WORDS = Pattern.compile("\\p{L}{2,}( \\p{L}+)+");

  private final Map<String, Formula> known = new LinkedHashMap<>();

  private StatementPieces(List<Formula> formulas) {
    formulas.stream()
        .filter(formula -> !(formula instanceof Formula.Words))
        .sorted(Comparator.comparing(formula -> -UnicodeWriter.write(formula).length()))
        .forEach(formula -> known.putIfAbsent(UnicodeWriter.write(formula), formula));
    known.keySet().removeIf(written -> written.isEmpty() || WORDS.matcher(written).matches());
  }

  /** Words and formulas in turn; joined as text they are the statement again. */
  public static List<Piece> of(Solution solution) {
    Given given = solution.given();
    List<Formula> formulas = new ArrayList<>();
    for (Formula polynomial : List.of(given.polynomial(), given.stated())) {
      formulas.add(polynomial);
      if (!(polynomial instanceof Formula.Relation) && !(polynomial instanceof Formula.Words)) {
        formulas.add(Formula.equation(polynomial, Formula.number(0)));
      }
    }
    withParts(given.find(), formulas);
    given.conditions().forEach(condition -> withParts(condition, formulas));
    given.roots().forEach(name -> formulas.add(Formula.name(name)));
    formulas.add(Formula.name(given.unknown()));
    return new StatementPieces(formulas).cut(solution.statement());
  }

  /** A formula and what it is made of, since a sentence may name a part alone. */
  private static void withParts(Formula formula, List<Formula> into) {
    if (!(formula instanceof Formula.Numeral)) {
      into.add(formula);
    }
    formula.parts().forEach(part -> withParts(part, into));
  }

  private List<Piece> cut(String sentence) {
    List<Piece> pieces = new ArrayList<>();
    StringBuilder words = new StringBuilder();
    int at = 0;
    while (at < sentence.length()) {
      String written = formulaAt(sentence, at);
      Formula formula = known.get(written);
      if (formula == null) {
        words.append(sentence.charAt(at++));
      } else {
        end(pieces, words);
        pieces.add(piece(formula));
        at += written.length();
      }
    }
    end(pieces, words);
    return pieces;
  }

  /** Formulas one after the other are set one by one, so that a line may end between them. */
  private static Piece piece(Formula formula) {
    return formula instanceof Formula.Listing listing
        ? new Piece.Enumeration(listing.items().stream().map(Piece::line).toList())
        : new Piece.Mathematics(formula);
  }

  private static void end(List<Piece> pieces, StringBuilder words) {
    if (!words.isEmpty()) {
      pieces.addAll(PlainText.kept(words.toString()));
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

  /** A raised or lowered digit belongs to the letter before it: no x stands alone in x². */
  private static boolean isPartOfWord(char c) {
    return Character.isLetterOrDigit(c)
        || Character.getType(c) == Character.OTHER_NUMBER
        || c == '\''
        || c == '’';
  }
}
