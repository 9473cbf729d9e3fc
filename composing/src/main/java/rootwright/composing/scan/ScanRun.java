package rootwright.composing.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.atomic.AtomicLong;
import rootwright.composing.scan.candidate.Row;

/** One run of a scan: workers take the tasks in turn and hand their tallies to the ledger. */
final class ScanRun {

  private final Scan scan;
  private final ScanControl control;
  private final Walk walk;
  private final long tasks;
  private final Ledger ledger;
  private final AtomicLong nextTask;
  private volatile boolean failed;

  ScanRun(Scan scan, ScanState start, ScanControl control) {
    this.scan = scan;
    this.control = control;
    walk = Walk.of(scan.box(), scan.order());
    tasks = scan.tasks();
    ledger = new Ledger(scan, walk, start, control);
    nextTask = new AtomicLong(start.next());
  }

  ScanResult run() {
    List<CompletableFuture<Void>> others = new ArrayList<>();
    for (int k = 1; k < control.workers(); k++) {
      others.add(CompletableFuture.runAsync(this::work, control.executor()));
    }
    work();
    others.forEach(ScanRun::join);
    ScanState state = ledger.state();
    Ending ending =
        state.next() == tasks
            ? Ending.EXHAUSTED
            : ledger.isClosed() ? Ending.ENOUGH : Ending.STOPPED;
    return new ScanResult(scan, state, ending);
  }

  /** Waits for a worker; what broke it breaks the run, as if the caller had done all the work. */
  private static void join(CompletableFuture<Void> worker) {
    try {
      worker.join();
    } catch (CompletionException wrapped) {
      if (wrapped.getCause() instanceof RuntimeException failure) {
        throw failure;
      }
      throw wrapped;
    }
  }

  private void work() {
    try {
      workOff();
    } catch (RuntimeException | Error failure) {
      // The others must not go on for hours before the caller hears of it.
      failed = true;
      throw failure;
    }
  }

  private void workOff() {
    Screening screening = Screening.of(scan);
    Row row = new Row(scan.box());
    while (!ledger.isClosed() && !failed) {
      long task = nextTask.getAndIncrement();
      if (task >= tasks) {
        return;
      }
      Tally tally = scan.newTally();
      long first = task * walk.rowsPerTask();
      long end = Math.min(scan.box().rows(), first + walk.rowsPerTask());
      for (long position = first; position < end; position++) {
        if (control.stopped().getAsBoolean()) {
          return;
        }
        row.moveTo(walk.rowAt(position));
        walk.enter(position, row, screening.screen(row, tally), tally);
      }
      ledger.enter(task, tally);
    }
  }
}
