package rootwright.algebra.notation;

/** Text inside a markup document. */
final class MarkupText {

  private MarkupText() {}

  static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
