package rootwright.press.prose;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.press.document.Piece;

/**
 * Finds the formulas in a line in which nobody marked them, such as a reason: {@code minus the
 * coefficient of x² over the lead}. A run of words is taken for a formula when it has a sign of
 * mathematics in it and the reader of formulas understands it.
 */
public final class PlainText {

  private static final Pattern SIGNS =
      Pattern.compile(".*[0-9₀-₉²³¹⁰-⁹ⁿₙᵏₖⁱᵢʲⱼ=+·/^_()√ΣΠ∏′≠≤≥<>−].*");
  private static final Pattern LETTER =
      Pattern.compile("[b-hj-zB-HJ-Zα-ω]|rs|rt|st|tr|rst|pq|pr|qr|pqr");
  private static final Pattern JOINT = Pattern.compile("[=+−·/<>≠≤≥…-]");
  private static final Pattern BARE_NUMBER = Pattern.compile("[0-9]+");

  /** Letters that are words too, or several letters: mathematics only beside a joint. */
  private static final Pattern OPEN = Pattern.compile("[aA]|[b-hj-zα-ω]{2,3}");

  private static final Pattern END = Pattern.compile("(-th)?[,;:.?]*$");

  private final BiPredicate<String, Formula> taken;

  private PlainText(BiPredicate<String, Formula> taken) {
    this.taken = taken;
  }

  /**
   * Words and formulas in turn, which joined as text are the line again, up to dots and blanks
   * between factors and to {@code e_n} or {@code x^n}, which get true indices. A number alone stays
   * with the words.
   */
  public static List<Piece> kept(String line) {
    return new PlainText(
            (run, formula) -> !BARE_NUMBER.matcher(run).matches() && isKept(run, formula))
        .pieces(line);
  }

  private static boolean isKept(String run, Formula formula) {
    String written = UnicodeWriter.write(formula);
    return joined(written).equals(joined(run))
        || (run.matches(".*[_^].*") && bare(written).equals(bare(run)));
  }

  /** Without the dots and blanks between factors. */
  private static String joined(String formula) {
    return formula.replaceAll("[·\\s]", "");
  }

  /** Without what tells how far an index or an exponent goes. */
  private static String bare(String formula) {
    return Normalizer.normalize(formula, Normalizer.Form.NFKC)
        .replaceAll("[_^()·\\s]", "")
        .replace('-', '−');
  }

  /** Words and formulas in turn; a formula may be written in another way than it stood there. */
  public static List<Piece> read(String line) {
    return new PlainText((run, formula) -> true).pieces(line);
  }

  private List<Piece> pieces(String line) {
    String[] tokens = line.split(" ", -1);
    List<Piece> pieces = new ArrayList<>();
    StringBuilder words = new StringBuilder();
    for (int from = 0; from < tokens.length; ) {
      int to = from;
      while (to < tokens.length && (isMathematical(tokens[to]) || isJoined(tokens, from, to))) {
        to++;
        if (endsPhrase(tokens[to - 1])) {
          break;
        }
      }
      Optional<Formula> formula = Optional.empty();
      String tail = "";
      while (to > from && formula.isEmpty()) {
        String run = String.join(" ", List.of(tokens).subList(from, to));
        tail = punctuation(run);
        formula = formula(run.substring(0, run.length() - tail.length()));
        to -= formula.isEmpty() ? 1 : 0;
      }
      if (formula.isPresent()) {
        words.append(from > 0 ? " " : "");
        flush(words, pieces);
        pieces.add(new Piece.Mathematics(formula.get()));
        words.append(tail);
        from = to;
      } else {
        words.append(from > 0 ? " " : "").append(tokens[from]);
        from++;
      }
    }
    flush(words, pieces);
    return pieces;
  }

  private static void flush(StringBuilder words, List<Piece> pieces) {
    if (!words.isEmpty()) {
      pieces.add(new Piece.Words(words.toString()));
      words.setLength(0);
    }
  }

  private static boolean isMathematical(String token) {
    String bare = token.substring(0, token.length() - punctuation(token).length());
    return SIGNS.matcher(bare).matches()
        || LETTER.matcher(bare).matches()
        || JOINT.matcher(bare).matches();
  }

  private static boolean isJoined(String[] tokens, int from, int at) {
    String bare = tokens[at].substring(0, tokens[at].length() - punctuation(tokens[at]).length());
    if (!OPEN.matcher(bare).matches()) {
      return false;
    }
    boolean before = at > from && JOINT.matcher(tokens[at - 1]).matches();
    boolean after =
        endsPhrase(tokens[at])
            || (at + 1 < tokens.length && JOINT.matcher(tokens[at + 1]).matches());
    return bare.length() == 1 ? before || (after && !endsPhrase(tokens[at])) : before && after;
  }

  private static boolean endsPhrase(String token) {
    return !punctuation(token).isEmpty();
  }

  private static String punctuation(String run) {
    Matcher end = END.matcher(run);
    return end.find() ? end.group() : "";
  }

  private Optional<Formula> formula(String run) {
    if (run.isEmpty() || !(SIGNS.matcher(run).matches() || LETTER.matcher(run).matches())) {
      return Optional.empty();
    }
    try {
      Formula formula = Dots.read(run);
      return taken.test(run, formula) ? Optional.of(formula) : Optional.empty();
    } catch (UnreadableException words) {
      return Optional.empty();
    }
  }
}
