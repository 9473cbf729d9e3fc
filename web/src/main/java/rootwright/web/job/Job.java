package rootwright.web.job;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * One piece of work under way, or done.
 *
 * <p>Followers hear every event from the first on, however late they come. A job that has lost its
 * last follower is stopped by {@link Jobs} after a moment.
 */
public final class Job implements Progress {

  private final String id;
  private final List<Event> history = new ArrayList<>();
  private final List<Consumer<Event>> followers = new ArrayList<>();
  private final CountDownLatch end = new CountDownLatch(1);
  private volatile boolean stopped;
  private Optional<Thread> worker = Optional.empty();
  private long allocatedBefore;

  Job(String id) {
    this.id = id;
  }

  /** The name by which the page asks for it; cannot be guessed. */
  public String id() {
    return id;
  }

  /**
   * Waits for the end.
   *
   * @return the last event, or nothing if the job goes on beyond the wait
   */
  public Optional<Event> await(Duration wait) throws InterruptedException {
    return end.await(wait.toMillis(), TimeUnit.MILLISECONDS)
        ? Optional.of(last())
        : Optional.empty();
  }

  /** Hands every event, past and to come, to the follower. */
  public synchronized void follow(Consumer<Event> follower) {
    history.forEach(follower);
    followers.add(follower);
  }

  /** Ends what {@link #follow} began. */
  public synchronized void leave(Consumer<Event> follower) {
    followers.remove(follower);
  }

  /** Whether nobody follows. */
  public synchronized boolean isAlone() {
    return followers.isEmpty();
  }

  /** Whether the work has ended. */
  public boolean isOver() {
    return end.getCount() == 0;
  }

  /** Tells the work to end early. */
  public synchronized void stop() {
    stopped = true;
    worker.ifPresent(Thread::interrupt);
  }

  @Override
  public boolean stopped() {
    return stopped;
  }

  @Override
  public void at(long done, long total, String text, ObjectNode details) {
    ObjectNode state = details.deepCopy();
    tell(new Event("progress", state.put("done", done).put("total", total).put("text", text)));
  }

  @Override
  public void found(JsonNode finding) {
    tell(new Event("found", finding));
  }

  /** How many bytes its thread has asked for since it began; 0 if it does not work. */
  synchronized long allocated() {
    return worker.map(thread -> Memory.allocatedBy(thread) - allocatedBefore).orElse(0L);
  }

  /** Takes the calling thread as the one to interrupt. */
  synchronized void workedBy(Thread thread) {
    worker = Optional.of(thread);
    allocatedBefore = Memory.allocatedBy(thread);
    if (stopped) {
      thread.interrupt();
    }
  }

  /** Lets the thread go: from now on it may do something else and must not be interrupted. */
  synchronized void workEnded() {
    worker = Optional.empty();
  }

  /** Whether its thread is still at it; an ended job may need a moment to stop. */
  synchronized boolean isBusy() {
    return worker.isPresent();
  }

  /** Ends the job; a second end is ignored, so that a late result cannot replace a message. */
  synchronized void end(Event last) {
    if (isOver()) {
      return;
    }
    tell(last);
    end.countDown();
  }

  /** Runs while nothing is told: two threads must not write to one follower at once. */
  public synchronized void betweenEvents(Runnable task) {
    task.run();
  }

  private synchronized void tell(Event event) {
    if (isOver()) {
      return;
    }
    if (event.name().equals("progress")) {
      history.removeIf(past -> past.name().equals("progress"));
    }
    history.add(event);
    List.copyOf(followers).forEach(follower -> follower.accept(event));
  }

  private synchronized Event last() {
    return history.get(history.size() - 1);
  }
}
