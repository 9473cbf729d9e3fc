package rootwright.composing.scan;

import java.util.Map;
import java.util.TreeMap;

/**
 * Puts the tallies of the tasks together in the order of the walk, whatever order they arrive in,
 * and closes when later tasks cannot change the result.
 */
final class Ledger {

  private final Scan scan;
  private final Walk walk;
  private final ScanControl control;
  private final Tally total;
  private final Map<Long, Tally> early = new TreeMap<>();
  private long next;
  private volatile boolean closed;

  Ledger(Scan scan, Walk walk, ScanState start, ScanControl control) {
    this.scan = scan;
    this.walk = walk;
    this.control = control;
    total = scan.newTally();
    total.add(start);
    next = start.next();
    closed = walk.isSettled(total) || control.enough().getAsBoolean();
  }

  /** Whether nothing more is needed. */
  boolean isClosed() {
    return closed;
  }

  /** Takes the tally of a task; those that come after the scan is settled are left out. */
  synchronized void enter(long task, Tally tally) {
    early.put(task, tally);
    for (Tally ready = early.remove(next); ready != null && !closed; ready = early.remove(next)) {
      total.add(ready);
      next++;
      control.listener().reached(state());
      closed = walk.isSettled(total) || control.enough().getAsBoolean();
    }
  }

  /** Everything before the first task that is not done. */
  synchronized ScanState state() {
    return total.state(next, scan.identity());
  }
}
