package rootwright.web.endpoint;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.sse.SseClient;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import rootwright.web.job.Event;
import rootwright.web.job.Job;
import rootwright.web.job.Jobs;
import rootwright.web.reply.FaultException;

/** Long work as the page sees it: a stream of events, and a way to stop it. */
public final class JobEndpoints {

  private static final long HEARTBEAT = 1000;

  private final Jobs jobs;

  /** A page that has gone is only noticed when something is sent to it. */
  private final ScheduledThreadPoolExecutor heart =
      new ScheduledThreadPoolExecutor(1, JobEndpoints::quiet);

  /** For these workers. */
  public JobEndpoints(Jobs jobs) {
    this.jobs = jobs;
    heart.setRemoveOnCancelPolicy(true);
  }

  /**
   * Adds {@code GET} (events) and {@code DELETE} (stop) of {@code /api/jobs/ID}, and {@code GET
   * /api/jobs/ID/end}: the last event, or nothing (204) while the work goes on.
   */
  public void addTo(RoutesConfig routes) {
    routes.get("/api/jobs/{id}/end", this::end);
    routes.sse("/api/jobs/{id}", this::follow);
    routes.delete("/api/jobs/{id}", context -> find(context).stop());
  }

  private void end(Context context) throws InterruptedException {
    Optional<Event> last = find(context).await(Duration.ZERO);
    last.ifPresentOrElse(event -> Reply.json(context, event.data()), () -> context.status(204));
  }

  private void follow(SseClient client) {
    Job job = find(client.ctx());
    client.keepAlive();
    Consumer<Event> follower =
        event -> {
          client.sendEvent(event.name(), Reply.text(event.data()));
          if (event.isLast()) {
            client.close();
          }
        };
    Future<?> beat =
        heart.scheduleAtFixedRate(
            () -> job.betweenEvents(() -> client.sendComment("still here")),
            HEARTBEAT,
            HEARTBEAT,
            TimeUnit.MILLISECONDS);
    client.onClose(
        () -> {
          beat.cancel(false);
          job.leave(follower);
        });
    job.follow(follower);
  }

  private static Thread quiet(Runnable task) {
    Thread thread = new Thread(task, "rootwright-heartbeat");
    thread.setDaemon(true);
    return thread;
  }

  private Job find(Context context) {
    return jobs.find(context.pathParam("id"))
        .orElseThrow(() -> new FaultException(404, "no-such-job", "This work is over."));
  }
}
