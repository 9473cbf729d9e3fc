package rootwright.lesson.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.UnreadableException;

/**
 * Finds the formulas in a line in which nobody marked them, such as a reason: {@code minus the
 * coefficient of x² over the lead}. A run of words is taken for a formula when it has a sign of
 * mathematics in it and the reader of formulas understands it.
 */
public final class Scan {

  private static final Pattern SIGNS = Pattern.compile(".*[0-9₀-₉²³¹⁰-⁹ⁿₙᵏₖ=+·/^_()√Σ′≠<>−].*");
  private static final Pattern LETTER = Pattern.compile("[b-hj-zB-HJ-Zα-ω]");
  private static final Pattern JOINT = Pattern.compile("[=+−·/<>≠≤≥-]");

  private Scan() {}

  /** The line with its formulas found. */
  public static Phrase of(String line) {
    String[] tokens = line.split(" ", -1);
    List<Part> parts = new ArrayList<>();
    StringBuilder words = new StringBuilder();
    for (int from = 0; from < tokens.length; ) {
      int to = from;
      while (to < tokens.length && isMathematical(tokens[to])) {
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
        formula = read(run.substring(0, run.length() - tail.length()));
        to -= formula.isEmpty() ? 1 : 0;
      }
      if (formula.isPresent()) {
        words.append(from > 0 ? " " : "");
        flush(words, parts);
        parts.add(new Part.Mathematics(formula.get()));
        words.append(tail);
        from = to;
      } else {
        words.append(from > 0 ? " " : "").append(tokens[from]);
        from++;
      }
    }
    flush(words, parts);
    return new Phrase(parts);
  }

  private static void flush(StringBuilder words, List<Part> parts) {
    if (!words.isEmpty()) {
      parts.add(new Part.Words(words.toString()));
      words.setLength(0);
    }
  }

  private static boolean isMathematical(String token) {
    String bare = token.substring(0, token.length() - punctuation(token).length());
    return SIGNS.matcher(bare).matches()
        || LETTER.matcher(bare).matches()
        || JOINT.matcher(bare).matches();
  }

  private static boolean endsPhrase(String token) {
    return !punctuation(token).isEmpty();
  }

  private static String punctuation(String run) {
    int end = run.length();
    while (end > 0 && ",;:.".indexOf(run.charAt(end - 1)) >= 0) {
      end--;
    }
    return run.substring(end);
  }

  private static Optional<Formula> read(String run) {
    if (run.isEmpty() || !(SIGNS.matcher(run).matches() || LETTER.matcher(run).matches())) {
      return Optional.empty();
    }
    try {
      return Optional.of(FormulaReader.formula(run));
    } catch (UnreadableException words) {
      return Optional.empty();
    }
  }
}
