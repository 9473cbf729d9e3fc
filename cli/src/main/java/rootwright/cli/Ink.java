package rootwright.cli;

/** Emphasis on a terminal; nothing at all where the output is kept. */
enum Ink {
  COLOURED("\u001B[1m", "\u001B[2m", "\u001B[33m", "\u001B[0m"),
  PLAIN("", "", "", "");

  private final String strong;
  private final String faint;
  private final String warning;
  private final String end;

  Ink(String strong, String faint, String warning, String end) {
    this.strong = strong;
    this.faint = faint;
    this.warning = warning;
    this.end = end;
  }

  String strong(String text) {
    return strong + text + end;
  }

  String faint(String text) {
    return faint + text + end;
  }

  String warning(String text) {
    return warning + text + end;
  }

  /** The columns a text takes, escape sequences not counted. */
  static int visibleLength(String text) {
    return text.replaceAll("\u001B\\[[0-9;]*m", "").length();
  }

  /** Colour where a person is looking. */
  static Ink of(Console console) {
    return console.terminal() ? COLOURED : PLAIN;
  }
}
