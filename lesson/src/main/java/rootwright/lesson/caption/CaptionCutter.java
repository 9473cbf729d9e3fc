package rootwright.lesson.caption;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Cuts what is said into captions: each sentence into lines that end where a phrase ends, each two
 * lines a caption. The lines of a sentence are those of least cost among all ways to divide it, in
 * time proportional to its length times the units that fit in a line.
 */
public final class CaptionCutter {

  private static final int A_LINE = 6;

  private CaptionCutter() {}

  /** The captions, in order. */
  public static List<Caption> cut(List<Unit> units) {
    List<Caption> captions = new ArrayList<>();
    List<Unit> sentence = new ArrayList<>();
    for (Unit unit : units) {
      sentence.add(unit);
      if (unit.endsSentence()) {
        captions.addAll(captions(sentence));
        sentence = new ArrayList<>();
      }
    }
    if (!sentence.isEmpty()) {
      captions.addAll(captions(sentence));
    }
    return captions;
  }

  private static List<Caption> captions(List<Unit> sentence) {
    List<List<Unit>> lines = lines(sentence);
    List<Caption> captions = new ArrayList<>();
    for (int from = 0; from < lines.size(); from += CaptionRules.LINES) {
      captions.add(caption(lines.subList(from, Math.min(lines.size(), from + CaptionRules.LINES))));
    }
    return captions;
  }

  private static Caption caption(List<List<Unit>> lines) {
    return new Caption(
        lines.stream().map(CaptionCutter::text).toList(),
        lines.stream().flatMap(List::stream).mapToInt(Unit::words).sum(),
        (int) lines.stream().flatMap(List::stream).filter(Unit::formula).count());
  }

  private static String text(List<Unit> line) {
    return line.stream().map(Unit::text).collect(Collectors.joining(" "));
  }

  /** The cheapest division: cost of each end of a line, of each line, and of its empty places. */
  private static List<List<Unit>> lines(List<Unit> units) {
    int n = units.size();
    long[] best = new long[n + 1];
    int[] from = new int[n + 1];
    Arrays.fill(best, Long.MAX_VALUE / 4);
    best[0] = 0;
    for (int end = 1; end <= n; end++) {
      int length = -1;
      for (int begin = end - 1; begin >= 0; begin--) {
        length += units.get(begin).text().length() + 1;
        if (length > CaptionRules.LINE && begin < end - 1) {
          break;
        }
        int ending = end == n ? 0 : units.get(end - 1).breakCost();
        int empty = (CaptionRules.LINE - Math.min(length, CaptionRules.LINE)) / 10;
        long cost = best[begin] + A_LINE + ending + empty;
        if (cost < best[end]) {
          best[end] = cost;
          from[end] = begin;
        }
      }
    }
    List<List<Unit>> lines = new ArrayList<>();
    for (int end = n; end > 0; end = from[end]) {
      lines.add(0, units.subList(from[end], end));
    }
    return lines;
  }
}
