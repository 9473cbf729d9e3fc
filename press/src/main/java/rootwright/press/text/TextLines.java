package rootwright.press.text;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Lines of text in the making: wrapped at blanks, moved in as far as asked.
 *
 * <p>A blank inside a formula is a {@link #FIRM} one: no line ends there. {@link #MAY_END} takes no
 * room and allows a line to end.
 */
final class TextLines {

  /** A blank at which no line ends. */
  static final char FIRM = '\u00A0';

  /** A place without room at which a line may end. */
  static final char MAY_END = '\u200B';

  private final int width;
  private final List<String> lines = new ArrayList<>();
  private final Deque<String> indents = new ArrayDeque<>();

  TextLines(int width) {
    this.width = width;
  }

  /** The room for text at the present indent. */
  int room() {
    return Math.max(20, width - indent().length());
  }

  /** Moves what follows in by the width of a marker, which stands before the next line. */
  void in(String marker, Runnable content) {
    int first = lines.size();
    String blank = " ".repeat(marker.length());
    indents.push(indent() + blank);
    content.run();
    indents.pop();
    if (lines.size() == first) {
      lines.add("");
    }
    String line = lines.get(first);
    int from = indent().length();
    lines.set(
        first,
        indent()
            + marker
            + (line.length() > from + marker.length()
                ? line.substring(from + marker.length())
                : ""));
  }

  /** An empty line, unless there is one already. */
  void gap() {
    if (!lines.isEmpty() && !lines.get(lines.size() - 1).isEmpty()) {
      lines.add("");
    }
  }

  /** Empty lines to write on. */
  void empty(int count) {
    for (int k = 0; k < count; k++) {
      lines.add("");
    }
  }

  /** A line of one sign. */
  void full(char sign) {
    line(String.valueOf(sign).repeat(room()));
  }

  /** One line as it is. */
  void line(String text) {
    lines.add((indent() + text.replace(FIRM, ' ').replace("" + MAY_END, "")).stripTrailing());
  }

  /** Text, wrapped. */
  void wrapped(String text) {
    for (String line : wrap(text, room())) {
      line(line);
    }
  }

  /** The lines of a text at a width; a word that is wider stands alone. */
  static List<String> wrap(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    int used = 0;
    for (String word : text.split("(?<=[ " + MAY_END + "])")) {
      int length = visible(word.stripTrailing());
      if (used > 0 && used + length > width) {
        lines.add(line.toString().stripTrailing());
        line.setLength(0);
        used = 0;
        word = word.stripLeading();
      }
      line.append(word);
      used += visible(word);
    }
    lines.add(line.toString().stripTrailing());
    return lines;
  }

  /** How many columns a text takes. */
  static int visible(String text) {
    return (int) text.codePoints().filter(point -> point != MAY_END).count();
  }

  String finished() {
    return String.join("\n", lines).stripTrailing() + "\n";
  }

  private String indent() {
    String indent = indents.peek();
    return indent == null ? "" : indent;
  }
}
