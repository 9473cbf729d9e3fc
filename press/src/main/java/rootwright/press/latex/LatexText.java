package rootwright.press.latex;

import rootwright.press.formula.Signs;

/** Words as LaTeX: nothing in them is a command. */
final class LatexText {

  private LatexText() {}

  /** The words, with special characters escaped and signs of mathematics as formulas. */
  static String of(String words) {
    StringBuilder into = new StringBuilder();
    words.codePoints().forEach(point -> into.append(letter(point)));
    return into.toString();
  }

  /** A formula whose words may hold signs that LaTeX knows as formulas only. */
  static String inFormula(String latex) {
    StringBuilder into = new StringBuilder();
    latex
        .codePoints()
        .forEach(point -> into.append(point < 128 ? Character.toString(point) : letter(point)));
    return into.toString();
  }

  private static String letter(int point) {
    return switch (point) {
      case '…' -> "\\ldots{}";
      case '’' -> "'";
      case '“' -> "``";
      case '”' -> "''";
      case '\\' -> "\\textbackslash{}";
      case '~' -> "\\textasciitilde{}";
      case '^' -> "\\textasciicircum{}";
      case '&', '%', '$', '#', '_', '{', '}' -> "\\" + Character.toString(point);
      case '<' -> "\\textless{}";
      case '>' -> "\\textgreater{}";
      case '|' -> "\\textbar{}";
      case '"' -> "''";
      case 0xA0 -> "~";
      default ->
          Signs.formula(point)
              .map(sign -> "$" + sign.latex() + "$")
              .orElseGet(() -> Character.toString(point));
    };
  }
}
