package rootwright.cli;

import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Solution;

/**
 * How long a problem may take. Work that takes longer is stopped and refused, so that a list of
 * problems goes on.
 */
record Patience(Duration longest) {

  /** What is done, and what it may throw. */
  interface Work {
    Solution run() throws UnreadableException;
  }

  /** Roomy, since formulas are walked by recursion. */
  private static final long STACK = 16L << 20;

  /** How long a computation has to notice that it is stopped before it is left to itself. */
  private static final Duration GRACE = Duration.ofSeconds(2);

  /**
   * The solution.
   *
   * @throws UnreadableException as the work does, or if it took too long
   */
  Solution spentOn(Statement statement, Work work) throws UnreadableException {
    CompletableFuture<Solution> done = new CompletableFuture<>();
    Thread worker =
        new Thread(
            null,
            () -> {
              try {
                done.complete(work.run());
              } catch (UnreadableException | RuntimeException | Error thrown) {
                done.completeExceptionally(thrown);
              }
            },
            "work",
            STACK);
    // What cannot be stopped must not keep the process alive.
    worker.setDaemon(true);
    worker.start();
    try {
      return done.get(longest.toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException late) {
      worker.interrupt();
      join(worker);
      throw new UnreadableException(tooLong(statement));
    } catch (InterruptedException interrupted) {
      worker.interrupt();
      Thread.currentThread().interrupt();
      throw new UnreadableException(tooLong(statement));
    } catch (ExecutionException failed) {
      throw rethrown(failed.getCause());
    }
  }

  private static void join(Thread worker) {
    try {
      worker.join(GRACE.toMillis());
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  private static UnreadableException rethrown(@org.jspecify.annotations.Nullable Throwable cause) {
    if (cause instanceof UnreadableException unreadable) {
      return unreadable;
    } else if (cause instanceof RuntimeException fault) {
      throw fault;
    } else if (cause instanceof Error fault) {
      throw fault;
    }
    throw new IllegalStateException(cause);
  }

  private Refusal tooLong(Statement statement) {
    return new Refusal(
        "too-long",
        "This was stopped after %d seconds.".formatted(longest.toSeconds()),
        statement.find(),
        0,
        "an ask with fewer roots or smaller exponents, or more time with --seconds",
        "");
  }
}
