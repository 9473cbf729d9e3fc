package rootwright.lesson.caption;

import java.util.List;

/**
 * A caption before it has a time.
 *
 * @param lines one or two
 * @param words how many words are spoken while it stands
 * @param formulas how many formulas or parts of one it has
 */
public record Caption(List<String> lines, int words, int formulas) {
  public Caption {
    lines = List.copyOf(lines);
  }
}
