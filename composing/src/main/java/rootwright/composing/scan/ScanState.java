package rootwright.composing.scan;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/**
 * How far a scan has come: enough to go on later, on any number of threads, with the same result as
 * if it had not been stopped.
 *
 * @param identity which scan this belongs to
 * @param next the first task that is not done
 * @param examined how many candidates the tasks before it have
 * @param accepted how many of them passed all filters
 * @param counts the counts of the filters, in the order of the scan
 * @param hits the candidates kept, best claim first
 */
public record ScanState(
    String identity, long next, long examined, long accepted, List<Count> counts, List<Hit> hits) {

  private static final String HEADING = "scan-state 1";
  private static final String END = "end";

  /** Keeps its own copies. */
  public ScanState {
    counts = List.copyOf(counts);
    hits = List.copyOf(hits);
  }

  /**
   * The counts of one filter.
   *
   * @param seen how many candidates it was asked about
   * @param rejected how many of them it rejected
   * @param alone how many were rejected by this filter and by no other; 0 if that is not counted
   * @param examples the numbers in the box of some of those
   */
  public record Count(long seen, long rejected, long alone, List<Long> examples) {
    /** Keeps its own copy. */
    public Count {
      examples = List.copyOf(examples);
    }
  }

  /** A few lines of plain text that {@link #parse} reads. */
  public String toText() {
    StringBuilder text = new StringBuilder(HEADING).append('\n');
    text.append("of ").append(identity).append('\n');
    text.append("next ").append(next).append('\n');
    text.append("examined ").append(examined).append('\n');
    text.append("accepted ").append(accepted).append('\n');
    for (Count count : counts) {
      text.append("filter ").append(count.seen).append(' ').append(count.rejected);
      text.append(' ').append(count.alone);
      count.examples.forEach(index -> text.append(' ').append(index));
      text.append('\n');
    }
    for (Hit hit : hits) {
      text.append("hit ").append(hit.rank()).append(' ').append(hit.position());
      text.append(' ').append(hit.index()).append('\n');
    }
    return text.append(END).append('\n').toString();
  }

  /**
   * Reads what {@link #toText} writes.
   *
   * @throws IllegalArgumentException if the text is something else or was cut off
   */
  public static ScanState parse(String text) {
    List<String> lines = text.lines().toList();
    if (lines.size() < 6
        || !lines.get(0).equals(HEADING)
        || !lines.get(lines.size() - 1).equals(END)) {
      throw new IllegalArgumentException("not a whole scan state: " + lines.size() + " lines");
    }
    Iterator<String> line = lines.subList(1, lines.size() - 1).iterator();
    String identity = rest("of ", line.next());
    long next = Long.parseLong(rest("next ", line.next()));
    long examined = Long.parseLong(rest("examined ", line.next()));
    long accepted = Long.parseLong(rest("accepted ", line.next()));
    List<Count> counts = new ArrayList<>();
    List<Hit> hits = new ArrayList<>();
    while (line.hasNext()) {
      String entry = line.next();
      if (entry.startsWith("filter ")) {
        List<Long> n = numbers(rest("filter ", entry), 3);
        counts.add(new Count(n.get(0), n.get(1), n.get(2), n.subList(3, n.size())));
      } else {
        List<Long> n = numbers(rest("hit ", entry), 3);
        hits.add(new Hit(n.get(0), n.get(1), n.get(2)));
      }
    }
    return new ScanState(identity, next, examined, accepted, counts, hits);
  }

  private static String rest(String start, String line) {
    if (!line.startsWith(start)) {
      throw new IllegalArgumentException("scan state: expected '" + start + "', found: " + line);
    }
    return line.substring(start.length());
  }

  private static List<Long> numbers(String text, int least) {
    List<Long> numbers = new ArrayList<>();
    for (String word : text.split(" ", -1)) {
      numbers.add(Long.valueOf(word));
    }
    if (numbers.size() < least) {
      throw new IllegalArgumentException("scan state: too few numbers: " + text);
    }
    return numbers;
  }
}
