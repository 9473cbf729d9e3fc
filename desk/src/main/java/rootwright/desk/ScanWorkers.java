package rootwright.desk;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import rootwright.algebra.notation.UnreadableException;
import rootwright.composing.blueprint.Composition;
import rootwright.composing.scan.ScanControl;

/** As many workers for a scan as the machine has processors. */
final class ScanWorkers {

  private ScanWorkers() {}

  /** Something that composes with a scan. */
  interface Composing {
    Composition with(ScanControl control) throws UnreadableException;
  }

  static Composition run(Composing composing) throws UnreadableException {
    int workers = Runtime.getRuntime().availableProcessors();
    ExecutorService executor = Executors.newFixedThreadPool(workers);
    try {
      return composing.with(ScanControl.shared(executor, workers));
    } finally {
      executor.shutdownNow();
    }
  }
}
