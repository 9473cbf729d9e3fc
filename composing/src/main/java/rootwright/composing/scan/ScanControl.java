package rootwright.composing.scan;

import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;

/**
 * Who does the work of a scan, who is told, and who may stop it. None of it changes the result.
 *
 * @param executor runs all workers but the first, which is the calling thread
 * @param workers how many workers share the tasks, at least 1
 * @param listener is told after each task
 * @param stopped is asked before each row, by all workers; once true, the scan ends early
 */
public record ScanControl(
    Executor executor, int workers, ScanListener listener, BooleanSupplier stopped) {

  /**
   * Checks the number of workers.
   *
   * @throws IllegalArgumentException if it is less than 1
   */
  public ScanControl {
    if (workers < 1) {
      throw new IllegalArgumentException("number of workers is not positive: " + workers);
    }
  }

  /** The calling thread alone, to the end, telling nobody. */
  public static ScanControl alone() {
    return shared(Runnable::run, 1);
  }

  /** Several workers, to the end, telling nobody. */
  public static ScanControl shared(Executor executor, int workers) {
    return new ScanControl(executor, workers, state -> {}, () -> false);
  }

  /** The same with another listener. */
  public ScanControl telling(ScanListener other) {
    return new ScanControl(executor, workers, other, stopped);
  }

  /** The same with another say in stopping. */
  public ScanControl until(BooleanSupplier other) {
    return new ScanControl(executor, workers, listener, other);
  }
}
