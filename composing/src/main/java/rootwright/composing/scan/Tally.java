package rootwright.composing.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import rootwright.composing.scan.candidate.Row;
import rootwright.composing.scan.candidate.Survivors;

/** The counts and hits of a part of a scan; parts are added in the order of the walk. */
final class Tally {

  /** How many candidates that fail one filter alone are remembered for each filter. */
  static final int EXAMPLES = 3;

  final long[] seen;
  final long[] rejected;
  final long[] alone;
  private final int kept;
  private final TreeSet<Hit> hits = new TreeSet<>();
  private final List<List<Long>> examples = new ArrayList<>();
  private long examined;
  private long accepted;
  private int firsts;

  Tally(int filters, int kept) {
    seen = new long[filters];
    rejected = new long[filters];
    alone = new long[filters];
    this.kept = kept;
    for (int k = 0; k < filters; k++) {
      examples.add(new ArrayList<>());
    }
  }

  /** Counts a screened row. */
  void count(int candidates, int passed) {
    examined += candidates;
    accepted += passed;
  }

  /** Enters a hit; returns whether it is kept for now. Then a worse one may have been dropped. */
  boolean enter(Hit hit) {
    if (hits.size() == kept) {
      if (kept == 0 || hits.last().compareTo(hit) < 0) {
        return false;
      }
      hits.pollLast();
    }
    hits.add(hit);
    firsts += hit.rank() == 0 ? 1 : 0;
    return true;
  }

  /** Whether as many hits as are wanted are the first of their rows. */
  boolean isFullOfFirsts() {
    return firsts >= kept;
  }

  /** Enters the places that fail one filter alone. */
  void enterAlone(int filter, Row row, Survivors places) {
    int count = places.count();
    if (count > 0) {
      alone[filter] += count;
      List<Long> list = examples.get(filter);
      for (int place = places.next(0);
          place >= 0 && list.size() < EXAMPLES;
          place = places.next(place + 1)) {
        list.add(row.index(place));
      }
    }
  }

  /** Adds what a later part found. */
  void add(Tally later) {
    add(later.state(0, ""));
  }

  /** Adds what was written down of a part. */
  void add(ScanState part) {
    count(part);
    part.hits().forEach(this::enter);
  }

  private void count(ScanState part) {
    examined += part.examined();
    accepted += part.accepted();
    for (int k = 0; k < seen.length; k++) {
      ScanState.Count count = part.counts().get(k);
      seen[k] += count.seen();
      rejected[k] += count.rejected();
      alone[k] += count.alone();
      List<Long> list = examples.get(k);
      count.examples().stream().limit(EXAMPLES - list.size()).forEach(list::add);
    }
  }

  /** Everything so far, as a value. */
  ScanState state(long next, String identity) {
    List<ScanState.Count> counts = new ArrayList<>();
    for (int k = 0; k < seen.length; k++) {
      counts.add(new ScanState.Count(seen[k], rejected[k], alone[k], examples.get(k)));
    }
    return new ScanState(identity, next, examined, accepted, counts, List.copyOf(hits));
  }
}
