package rootwright.web;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.concurrent.atomic.AtomicInteger;
import rootwright.desk.Desk;
import rootwright.web.endpoint.WorkEndpoint;
import rootwright.web.job.Jobs;
import rootwright.web.sentence.Sentence;
import rootwright.web.sentence.Sentences;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;

/**
 * Works the example of every sentence once, while nobody waits for anything, so that the first
 * problem of its kind does not wait for its classes to be loaded.
 */
final class WarmUp implements Runnable, AutoCloseable {

  private static final Logger LOG = System.getLogger(WarmUp.class.getName());
  private static final long PAUSE = 20;
  private static final int TURNS = 2;

  private final Desk desk;
  private final Jobs jobs;
  private final AtomicInteger worked = new AtomicInteger();
  private final Thread thread = new Thread(this, "rootwright-warm-up");

  /** For a desk; {@code jobs} are those that go before. */
  WarmUp(Desk desk, Jobs jobs) {
    this.desk = desk;
    this.jobs = jobs;
    thread.setDaemon(true);
  }

  /** Begins; returns at once. */
  void start() {
    thread.start();
  }

  /** How many examples have been worked. */
  int worked() {
    return worked.get();
  }

  /** Waits for the end. */
  void await() throws InterruptedException {
    thread.join();
  }

  @Override
  public void run() {
    try {
      for (int turn = 0; turn < TURNS; turn++) {
        for (Sentence sentence : Sentences.ALL) {
          while (!jobs.areIdle()) {
            Thread.sleep(PAUSE);
          }
          work(sentence);
          worked.incrementAndGet();
        }
      }
    } catch (InterruptedException closed) {
      Thread.currentThread().interrupt();
    }
  }

  private void work(Sentence sentence) throws InterruptedException {
    Statement statement =
        Statement.of(
            sentence.exampleOf(sentence.polynomial()), sentence.exampleOf(sentence.find()));
    try {
      WorkEndpoint.reply(desk, statement, desk.work(statement, ClassProfile.EVERYTHING));
    } catch (Exception | StackOverflowError ours) {
      if (Thread.currentThread().isInterrupted()) {
        throw new InterruptedException();
      }
      // Whoever asks for it will be told; a warm-up has nobody to tell.
      LOG.log(Level.DEBUG, "the example of {0} was not worked", sentence.name());
    }
  }

  /** Ends it early. */
  @Override
  public void close() {
    thread.interrupt();
  }
}
