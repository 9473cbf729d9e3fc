package rootwright.algebra.notation;

/** Characters of running text in LaTeX. */
final class LatexText {

  private LatexText() {}

  static String escaped(int point) {
    return switch (point) {
      case '\\' -> "\\textbackslash{}";
      case '~' -> "\\textasciitilde{}";
      case '^' -> "\\textasciicircum{}";
      case '{', '}', '$', '%', '&', '#', '_' -> "\\" + Character.toString(point);
      default -> Character.toString(point);
    };
  }
}
