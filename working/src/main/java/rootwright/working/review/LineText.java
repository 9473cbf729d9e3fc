package rootwright.working.review;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A line as somebody wrote it, without what carries no mathematics: its number, "so", "hence", a
 * reason behind "because".
 */
public final class LineText {

  private static final Pattern NUMBER = Pattern.compile("^\\(?\\d{1,2}[.)]\\s+");
  private static final Pattern OPENING =
      Pattern.compile(
          "^(?:so|then|hence|thus|therefore|now|and|but|let|also|finally|we (?:get|have|find|know)|"
              + "this (?:gives|is)|which (?:gives|is)|that is|it follows that|the answer is|"
              + "answer:?|[⇒→∴⟹]|=>|->|\\\\Rightarrow|\\\\implies|\\\\therefore)(?![\\p{L}\\d])[,:]?\\s*",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  /** Words and a colon, such as "sum of the squares:", before the mathematics. */
  private static final Pattern LABEL =
      Pattern.compile("^\\p{L}{2,20}+(?:\\s{1,3}\\p{L}{1,20}+){0,7}+\\s?:(?!=)\\s*");

  private static final Pattern CLOSING =
      Pattern.compile(
          "(?:[,;]?\\s+(?:because|since|by|as|from|using|for (?:all|every|each)|as wanted|qed)\\b.*"
              + "|[.;,]|\\s*∎|\\s*\\\\\\\\)\\s*$",
          Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

  /** Longest line that is looked at, in characters. */
  public static final int LONGEST = 2_000;

  private LineText() {}

  /** What is left of the line: the mathematics, if there is any. */
  public static String bare(String line) {
    String text = NUMBER.matcher(line.strip()).replaceFirst("").strip();
    for (String before = ""; !before.equals(text); ) {
      before = text;
      text = OPENING.matcher(text).replaceFirst("").strip();
      text = LABEL.matcher(text).replaceFirst("").strip();
      text = CLOSING.matcher(text).replaceFirst("").strip();
    }
    return text;
  }

  private static final Pattern THEREFORE =
      Pattern.compile(
          "\\s*(?:⇒|⟹|⇔|⟺|→|∴|=>|<=>|->|\\\\Rightarrow|\\\\implies|\\\\iff|\\\\Leftrightarrow"
              + "|\\\\therefore|\\\\to\\b|\\b(?:so|hence|thus|therefore|which gives|giving|gives|then"
              + "|that is|i\\.e\\.|means|implies|yields|whence)\\b)[,:]?\\s*",
          Pattern.CASE_INSENSITIVE);

  /** The parts of a line between "so", "hence" and arrows, each without what is no mathematics. */
  public static List<String> parts(String line) {
    List<String> parts = new ArrayList<>();
    for (String part : THEREFORE.split(bare(line))) {
      if (!part.isBlank()) {
        parts.add(bare(part));
      }
    }
    return parts;
  }

  /** The equations of a line, which commas, semicolons or "and" part outside brackets. */
  public static List<String> pieces(String bare) {
    List<String> pieces = new ArrayList<>();
    int depth = 0;
    int from = 0;
    for (int at = 0; at < bare.length(); at++) {
      char c = bare.charAt(at);
      depth += "([{".indexOf(c) >= 0 ? 1 : ")]}".indexOf(c) >= 0 ? -1 : 0;
      boolean word = depth == 0 && bare.startsWith(" and ", at);
      if (word || (depth == 0 && (c == ';' || c == ',') && hasEquation(bare.substring(from, at)))) {
        pieces.add(bare.substring(from, at).strip());
        from = at + (word ? " and ".length() : 1);
        at = from - 1;
      }
    }
    pieces.add(bare.substring(from).strip());
    return pieces.stream().filter(piece -> !piece.isEmpty()).toList();
  }

  /** Whether there is a sign of equality; "≡" is none. */
  public static boolean hasEquation(String text) {
    return text.indexOf('=') >= 0;
  }
}
