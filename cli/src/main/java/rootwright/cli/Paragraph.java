package rootwright.cli;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.working.route.Working;
import rootwright.working.step.Step;

/** Text for a terminal, broken at blanks; what goes on is indented as far as its beginning. */
final class Paragraph {

  private final int width;
  private final List<String> lines = new ArrayList<>();

  Paragraph(int width) {
    this.width = width;
  }

  /** An empty line. */
  void blank() {
    lines.add("");
  }

  /** A line as it is. */
  void line(String text) {
    lines.add(text);
  }

  /** Text behind a head, which the lines after the first are indented by. */
  void add(String head, String text) {
    String indent = " ".repeat(head.length());
    StringBuilder line = new StringBuilder(head);
    int used = head.length();
    for (String word : text.split(" ")) {
      int length = Ink.visibleLength(word);
      if (used > indent.length() && used + 1 + length > width) {
        lines.add(line.toString());
        line = new StringBuilder(indent);
        used = indent.length();
      }
      boolean first = used == indent.length();
      line.append(first ? "" : " ").append(word);
      used += length + (first ? 0 : 1);
    }
    lines.add(line.toString());
  }

  /** The numbered steps of a working, the reason at the end of each, or below where room ends. */
  void steps(String indent, Working working, Ink ink) {
    int number = 1;
    for (Step step : working.steps()) {
      step(
          indent + "%3d  ".formatted(number++),
          UnicodeWriter.write(step.shown()),
          step.reason(),
          ink);
    }
  }

  private void step(String head, String formula, String reason, Ink ink) {
    int room = width - head.length() - formula.length() - reason.length();
    if (room >= 3) {
      line(head + formula + " ".repeat(room) + ink.faint(reason));
    } else {
      add(head, formula);
      add(" ".repeat(head.length() + 2), ink.faint(reason));
    }
  }

  /** Everything so far. */
  String text() {
    return String.join(System.lineSeparator(), lines);
  }
}
