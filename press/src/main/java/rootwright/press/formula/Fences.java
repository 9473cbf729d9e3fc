package rootwright.press.formula;

import java.util.regex.Pattern;

/**
 * Brackets in LaTeX: those that need not grow are written plainly, since growing ones get room
 * around them that a function does not want ({@code P (x)}).
 */
final class Fences {

  private static final String OPEN = "\\left(";
  private static final String CLOSE = "\\right)";

  /** What makes a bracket grow. */
  private static final Pattern TALL = Pattern.compile("\\\\(frac|sqrt|sum|prod|left|text\\{\\})");

  private Fences() {}

  /** The same formula with plain brackets where they are as good. Linear for each level. */
  static String snug(String latex) {
    int open = latex.indexOf(OPEN);
    if (open < 0) {
      return latex;
    }
    int close = matching(latex, open + OPEN.length());
    if (close < 0) {
      return latex;
    }
    String inner = snug(latex.substring(open + OPEN.length(), close));
    String rest = snug(latex.substring(close + CLOSE.length()));
    String before = latex.substring(0, open);
    return TALL.matcher(inner).find()
        ? before + OPEN + inner + CLOSE + rest
        : before + "(" + inner + ")" + rest;
  }

  /** Where the bracket ends whose content begins here, or -1. */
  private static int matching(String latex, int from) {
    int depth = 1;
    for (int k = from; k < latex.length(); k++) {
      if (latex.startsWith("\\left", k)) {
        depth++;
      } else if (latex.startsWith("\\right", k)) {
        depth--;
        if (depth == 0) {
          return latex.startsWith(CLOSE, k) ? k : -1;
        }
      }
    }
    return -1;
  }
}
