package rootwright.web.job;

import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import rootwright.algebra.stop.StoppedException;

/**
 * Gives each piece of a long job a time of its own, so that one hard piece does not hold up all.
 */
public final class Turn {

  private final ScheduledThreadPoolExecutor clock;
  private final Progress progress;
  private final Duration longest;

  /**
   * Turns of a job.
   *
   * @param clock rings when a turn is over its time
   * @param progress of the job; once it is stopped no turn goes on
   * @param longest how long each may take
   */
  public Turn(ScheduledThreadPoolExecutor clock, Progress progress, Duration longest) {
    this.clock = clock;
    this.progress = progress;
    this.longest = longest;
  }

  /**
   * Does one piece in the calling thread.
   *
   * @throws TooLongException if it took too long
   * @throws StoppedException if the whole job was stopped
   * @throws Exception as the piece does
   */
  public <T> T spentOn(Callable<T> piece) throws Exception {
    Bell bell = new Bell(Thread.currentThread());
    Future<?> rung = clock.schedule(bell, longest.toMillis(), TimeUnit.MILLISECONDS);
    try {
      return piece.call();
    } catch (StoppedException | InterruptedException ended) {
      throw progress.stopped() ? new StoppedException() : new TooLongException(longest);
    } finally {
      rung.cancel(false);
      if (bell.silence() && !progress.stopped()) {
        // The bell may have rung just as the piece ended; the next one must not hear it.
        Thread.interrupted();
      }
    }
  }

  /** Interrupts a thread, unless it was silenced before. */
  private static final class Bell implements Runnable {

    private final Thread thread;
    private boolean rang;
    private boolean silenced;

    Bell(Thread thread) {
      this.thread = thread;
    }

    @Override
    public synchronized void run() {
      if (!silenced) {
        rang = true;
        thread.interrupt();
      }
    }

    /** From now on it does not ring; tells whether it did. */
    synchronized boolean silence() {
      silenced = true;
      return rang;
    }
  }
}
