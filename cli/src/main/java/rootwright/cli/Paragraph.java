package rootwright.cli;

import java.util.ArrayList;
import java.util.List;

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

  /** Everything so far. */
  String text() {
    return String.join(System.lineSeparator(), lines);
  }
}
