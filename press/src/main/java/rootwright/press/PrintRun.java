package rootwright.press;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import rootwright.press.paper.BlockedException;

/**
 * Prints many files, a few at a time. What the store has already is not printed again, so a run
 * that was broken off goes on where it stopped.
 */
public final class PrintRun {

  private PrintRun() {}

  /** Where printed files go. Used by several threads. */
  public interface Store {
    /** Whether a whole file of this name is there. */
    boolean has(String name);

    /** Keeps a file; either whole or not at all. */
    void put(PrintedFile file);
  }

  /** Told after each file. Used by several threads. */
  @FunctionalInterface
  public interface Progress {
    /**
     * So far.
     *
     * @param done files that are there
     * @param all files of the run
     */
    void done(int done, int all);
  }

  /**
   * Prints what is missing.
   *
   * @param threads how many files at a time, at least 1
   * @return how many files were printed in this run
   * @throws BlockedException if a paper is empty or a key is stale; files before it are kept
   * @throws InterruptedException if the run is broken off; files printed so far are kept
   */
  public static int print(List<PrintJob> jobs, Store store, Progress progress, int threads)
      throws BlockedException, InterruptedException {
    AtomicInteger done = new AtomicInteger();
    AtomicInteger printed = new AtomicInteger();
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try {
      List<Future<?>> results = new ArrayList<>();
      for (PrintJob job : jobs) {
        results.add(
            workers.submit(
                () -> {
                  if (!store.has(job.fileName())) {
                    store.put(job.print());
                    printed.incrementAndGet();
                  }
                  progress.done(done.incrementAndGet(), jobs.size());
                  return job;
                }));
      }
      for (Future<?> result : results) {
        await(result);
      }
    } finally {
      workers.shutdownNow();
    }
    return printed.get();
  }

  private static void await(Future<?> result) throws BlockedException, InterruptedException {
    try {
      result.get();
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof BlockedException blocked) {
        throw blocked;
      }
      if (failed.getCause() instanceof RuntimeException refused) {
        throw refused;
      }
      throw new IllegalStateException(failed.getCause());
    }
  }
}
