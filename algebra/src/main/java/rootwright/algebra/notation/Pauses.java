package rootwright.algebra.notation;

import java.util.regex.Pattern;

/** Tidies the commas of a spoken text: none at the end, none twice, one blank after each. */
final class Pauses {

  private static final Pattern REPEATED = Pattern.compile("\\s*(,\\s*)+");
  private static final Pattern BLANKS = Pattern.compile("\\s+");
  private static final Pattern LAST = Pattern.compile(",\\s*$");

  private Pauses() {}

  static String tidied(String text) {
    String single = REPEATED.matcher(text).replaceAll(", ");
    return BLANKS.matcher(LAST.matcher(single).replaceAll("")).replaceAll(" ").strip();
  }
}
