package rootwright.web.endpoint;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.sse.SseClient;
import java.util.function.Consumer;
import rootwright.web.job.Event;
import rootwright.web.job.Job;
import rootwright.web.job.Jobs;
import rootwright.web.reply.FaultException;

/** Long work as the page sees it: a stream of events, and a way to stop it. */
public final class JobEndpoints {

  private final Jobs jobs;

  /** For these workers. */
  public JobEndpoints(Jobs jobs) {
    this.jobs = jobs;
  }

  /** Adds {@code GET} (events) and {@code DELETE} (stop) of {@code /api/jobs/ID}. */
  public void addTo(RoutesConfig routes) {
    routes.sse("/api/jobs/{id}", this::follow);
    routes.delete("/api/jobs/{id}", context -> find(context).stop());
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
    client.onClose(() -> job.leave(follower));
    job.follow(follower);
  }

  private Job find(Context context) {
    return jobs.find(context.pathParam("id"))
        .orElseThrow(() -> new FaultException(404, "no-such-job", "This work is over."));
  }
}
