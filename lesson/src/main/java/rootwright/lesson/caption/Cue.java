package rootwright.lesson.caption;

import java.util.List;

/**
 * A caption with its time, in milliseconds from the beginning.
 *
 * @param from when it appears
 * @param to when it goes
 * @param lines one or two
 * @param words how many words are spoken while it stands
 */
public record Cue(long from, long to, List<String> lines, int words) {
  public Cue {
    lines = List.copyOf(lines);
  }
}
