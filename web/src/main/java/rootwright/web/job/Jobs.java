package rootwright.web.job;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.stop.StoppedException;
import rootwright.desk.contract.RefusalContract;
import rootwright.web.reply.Fault;
import rootwright.web.reply.FaultException;

/**
 * The desk's workers.
 *
 * <p>Every job ends: with a result, with a plain message, or because nobody waits for it. What goes
 * wrong inside is written to the log under a number, and only the number reaches the page.
 */
public final class Jobs implements AutoCloseable {

  private static final Logger LOG = System.getLogger(Jobs.class.getName());
  private static final Duration KEPT_AFTER_END = Duration.ofMinutes(2);
  private static final long MEMORY_LOOKED_AT = 250;

  private static final Event TOO_LARGE =
      failed(new Fault(507, "too-large", "This ask needs more memory than the desk has."));

  private final Map<String, Job> jobs = new ConcurrentHashMap<>();
  private final ThreadPoolExecutor workers;
  private final ScheduledThreadPoolExecutor clock =
      new ScheduledThreadPoolExecutor(1, Jobs::quiet, new ThreadPoolExecutor.DiscardPolicy());

  /**
   * Workers for so many jobs at once; one more is refused, not queued.
   *
   * @param atOnce at least 1
   */
  public Jobs(int atOnce) {
    workers =
        new ThreadPoolExecutor(
            0, atOnce, 20, TimeUnit.SECONDS, new SynchronousQueue<>(), Jobs::quiet);
    var unused =
        clock.scheduleWithFixedDelay(
            this::lookAfterMemory, MEMORY_LOOKED_AT, MEMORY_LOOKED_AT, TimeUnit.MILLISECONDS);
  }

  /**
   * Starts a piece of work under a name of the desk's choice.
   *
   * @throws FaultException if all workers are busy
   */
  public Job start(Budget budget, Work work) {
    return start(UUID.randomUUID(), budget, work);
  }

  /**
   * Starts a piece of work under a name that the page chose, so that the page can stop it before it
   * has heard of it.
   *
   * @throws FaultException if all workers are busy, or there is such a job already
   */
  public Job start(UUID name, Budget budget, Work work) {
    Job job = new Job(name.toString());
    if (jobs.putIfAbsent(job.id(), job) != null) {
      throw new FaultException(409, "job-known", "This work is being done already.");
    }
    try {
      workers.execute(() -> run(job, work));
    } catch (RejectedExecutionException busy) {
      jobs.remove(job.id());
      throw new FaultException(
          503, "busy", "The desk is working on other asks. Wait for one to end, or stop it.");
    }
    var unused =
        clock.schedule(
            () -> overtime(job, budget), budget.time().toMillis(), TimeUnit.MILLISECONDS);
    watch(job, budget, false);
    return job;
  }

  /** The job of this name, unless it is forgotten. */
  public Optional<Job> find(String id) {
    return Optional.ofNullable(jobs.get(id));
  }

  /** Whether nothing is being worked on. */
  public boolean areIdle() {
    return workers.getActiveCount() == 0;
  }

  /** Stops everything. */
  @Override
  public void close() {
    for (Job job : jobs.values()) {
      job.end(stopped());
      job.stop();
    }
    workers.shutdownNow();
    clock.shutdownNow();
  }

  private void run(Job job, Work work) {
    job.workedBy(Thread.currentThread());
    Event last;
    try {
      last = new Event("done", work.run(job));
    } catch (UnreadableException unreadable) {
      last = new Event("failed", RefusalContract.of(unreadable.refusal()));
    } catch (FaultException refused) {
      last = failed(refused.fault());
    } catch (OutOfMemoryError full) {
      last = TOO_LARGE;
    } catch (StoppedException unwanted) {
      last = stopped();
    } catch (Exception | StackOverflowError wrong) {
      last = job.stopped() ? stopped() : failed(unexpected(wrong));
    } finally {
      job.workEnded();
      Thread.interrupted();
    }
    job.end(last);
    var unused =
        clock.schedule(
            () -> jobs.remove(job.id()), KEPT_AFTER_END.toMillis(), TimeUnit.MILLISECONDS);
  }

  /** Writes the cause to the log and gives the number under which it is found there. */
  public static Fault unexpected(Throwable cause) {
    String number = UUID.randomUUID().toString().substring(0, 8);
    LOG.log(Level.ERROR, "fault " + number, cause);
    return new Fault(
        500,
        "ours-to-mend",
        "Something went wrong that should not have. It is in the log as %s.".formatted(number));
  }

  private void overtime(Job job, Budget budget) {
    if (!job.isOver()) {
      job.end(
          failed(
              new Fault(
                  504,
                  "too-long",
                  "This ask took longer than %d seconds and was stopped."
                      .formatted(budget.time().toSeconds()))));
      job.stop();
    }
  }

  /** Looks again after a while; a job is stopped that is found alone twice in a row. */
  private void watch(Job job, Budget budget, boolean alone) {
    var unused =
        clock.schedule(
            () -> lookAfter(job, budget, alone), budget.alone().toMillis(), TimeUnit.MILLISECONDS);
  }

  private void lookAfter(Job job, Budget budget, boolean aloneBefore) {
    if (job.isOver()) {
      return;
    }
    if (aloneBefore && job.isAlone()) {
      job.end(stopped());
      job.stop();
    } else {
      watch(job, budget, job.isAlone());
    }
  }

  /** When memory runs out, the job that has asked for the most is ended, and no other. */
  private void lookAfterMemory() {
    // What an ended job holds is free once its thread has stopped.
    boolean stopping = jobs.values().stream().anyMatch(job -> job.isOver() && job.isBusy());
    if (!stopping && Memory.isFull()) {
      jobs.values().stream()
          .filter(job -> !job.isOver())
          .max(Comparator.comparingLong(Job::allocated))
          .ifPresent(
              job -> {
                job.end(TOO_LARGE);
                job.stop();
              });
    }
  }

  private static Event stopped() {
    return failed(new Fault(499, "stopped", "Stopped."));
  }

  private static Event failed(Fault fault) {
    return new Event("failed", fault.json().put("status", fault.status()));
  }

  private static Thread quiet(Runnable task) {
    Thread thread = new Thread(task, "rootwright-worker");
    thread.setDaemon(true);
    return thread;
  }
}
