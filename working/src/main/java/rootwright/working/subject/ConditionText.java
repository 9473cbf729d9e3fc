package rootwright.working.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Cuts an ask from its conditions, and the conditions from one another. */
final class ConditionText {

  private static final Set<String> OPENING =
      Set.of("if", "given", "when", "where", "provided", "assuming");

  /** Openings of two words; the first alone opens nothing. */
  private static final Set<String> OPENING_PAIRS =
      Set.of("such that", "so that", "for which", "given that", "provided that", "assuming that");

  /** “The remainder when … is divided by 7” has no condition. */
  private static final Pattern DIVIDED =
      Pattern.compile(
          "when\\s+[^,;]{1,200}?\\s(?:is\\s+)?divided\\s+by\\b", Pattern.CASE_INSENSITIVE);

  private ConditionText() {}

  /** The ask, then one text for each condition. */
  static List<String> split(String text) {
    List<String> pieces = new ArrayList<>();
    StringBuilder piece = new StringBuilder();
    boolean conditions = false;
    int depth = 0;
    int at = 0;
    while (at < text.length()) {
      char c = text.charAt(at);
      depth += "([{".indexOf(c) >= 0 ? 1 : ")]}".indexOf(c) >= 0 ? -1 : 0;
      String word = depth == 0 ? wordAt(text, at) : "";
      String pair = conditions || word.isEmpty() ? "" : pairAt(text, at, word);
      if (OPENING_PAIRS.contains(pair.toLowerCase(Locale.ROOT).replaceAll("\\s+", " "))) {
        word = pair;
      }
      if (word.equals("when") && DIVIDED.matcher(text).region(at, text.length()).lookingAt()) {
        pair = "";
        word = "";
      }
      boolean cut =
          conditions
              ? word.equals("and")
              : OPENING.contains(word) || (!pair.isEmpty() && word.equals(pair));
      if (cut) {
        end(pieces, piece, !conditions);
        conditions = true;
        at += word.length();
      } else if (conditions && depth == 0 && (c == ',' || c == ';')) {
        end(pieces, piece, false);
        at++;
      } else {
        // A word that cuts nothing is taken whole, so that no part of it is looked at again.
        int length = Math.max(1, word.length());
        piece.append(text, at, at + length);
        at += length;
      }
    }
    end(pieces, piece, !conditions);
    return pieces;
  }

  /** The word that begins here with the next one, as typed; empty if no word follows. */
  private static String pairAt(String text, int at, String word) {
    int next = at + word.length();
    while (next < text.length() && Character.isWhitespace(text.charAt(next))) {
      next++;
    }
    String second = next < text.length() ? wordAt(text, next) : "";
    return second.isEmpty() ? "" : text.substring(at, next + second.length());
  }

  /** The ask is kept even if it is empty, so that its place can be named; a condition is not. */
  private static void end(List<String> pieces, StringBuilder piece, boolean ask) {
    String text = piece.toString().strip();
    if (ask || !text.isEmpty()) {
      pieces.add(text);
    }
    piece.setLength(0);
  }

  /** The word that begins here, lower case; empty inside a word or where no letter stands. */
  private static String wordAt(String text, int at) {
    boolean inside = at > 0 && isPartOfWord(text.charAt(at - 1));
    int end = at;
    while (end < text.length() && isPartOfWord(text.charAt(end))) {
      end++;
    }
    return inside || !Character.isLetter(text.charAt(at))
        ? ""
        : text.substring(at, end).toLowerCase(Locale.ROOT);
  }

  private static boolean isPartOfWord(char c) {
    return Character.isLetterOrDigit(c) || c == '_' || c == '\\';
  }
}
