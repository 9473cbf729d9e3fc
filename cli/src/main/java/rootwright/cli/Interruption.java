package rootwright.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/**
 * Lets Ctrl-C end long work in order: the work is told to stop, and the process waits until what is
 * known by then is printed and kept.
 */
final class Interruption implements BooleanSupplier, AutoCloseable {

  private static final long PATIENCE_SECONDS = 20;

  private final CountDownLatch finished = new CountDownLatch(1);
  private final Thread hook = new Thread(this::interrupted, "interruption");
  private volatile boolean wanted;

  /** From now on Ctrl-C tells the work to stop. */
  Interruption() {
    Runtime.getRuntime().addShutdownHook(hook);
  }

  private void interrupted() {
    wanted = true;
    try {
      // The process ends either way; the time is only a bound.
      boolean unused = finished.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException impatient) {
      Thread.currentThread().interrupt();
    }
  }

  /** Whether the work is to stop. */
  @Override
  public boolean getAsBoolean() {
    return wanted;
  }

  /** The work is over. */
  @Override
  public void close() {
    finished.countDown();
    if (!wanted) {
      try {
        Runtime.getRuntime().removeShutdownHook(hook);
      } catch (IllegalStateException endingAlready) {
        // Ctrl-C came between the two lines above; the hook has run or finds the work over.
      }
    }
  }
}
