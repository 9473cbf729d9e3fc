package rootwright.press.pdf;

import rootwright.press.markup.Markup;

/** Stretches inside a line: blanks to write on, and room. */
final class Leaders {

  private Leaders() {}

  /** A line to write on. */
  static void rule(double width, Markup into) {
    into.empty(
        "fo:leader",
        "leader-pattern",
        "rule",
        "rule-thickness",
        "0.5pt",
        "leader-length",
        Points.pt(width));
  }

  /** Empty room of a fixed width. */
  static void room(double width, Markup into) {
    into.empty("fo:leader", "leader-pattern", "space", "leader-length", Points.pt(width));
  }

  /** Empty room that takes what the line has left. */
  static void rest(Markup into) {
    into.empty(
        "fo:leader",
        "leader-pattern",
        "space",
        "leader-length.minimum",
        "1em",
        "leader-length.optimum",
        "1em",
        "leader-length.maximum",
        "100%");
  }
}
