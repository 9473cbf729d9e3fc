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
 * @param enough is asked after the listener was told of a task, by one thread at a time and in the
 *     order of the walk; once true, the scan ends behind that task. If it depends on nothing but
 *     the states told, the result is the same on any number of threads
 */
public record ScanControl(
    Executor executor,
    int workers,
    ScanListener listener,
    BooleanSupplier stopped,
    BooleanSupplier enough) {

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
    return new ScanControl(executor, workers, state -> {}, () -> false, () -> false);
  }

  /** The same with another listener. */
  public ScanControl telling(ScanListener other) {
    return new ScanControl(executor, workers, other, stopped, enough);
  }

  /** The same with another say in stopping. */
  public ScanControl until(BooleanSupplier other) {
    return new ScanControl(executor, workers, listener, other, enough);
  }

  /** The same, ending where enough is found. */
  public ScanControl endingWhen(BooleanSupplier other) {
    return new ScanControl(executor, workers, listener, stopped, other);
  }
}
