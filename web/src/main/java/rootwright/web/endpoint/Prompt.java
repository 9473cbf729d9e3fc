package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.Optional;
import rootwright.web.job.Budget;
import rootwright.web.job.Event;
import rootwright.web.job.Job;

/** Answers at once where the work is quick, and with the name of its job where it is not. */
final class Prompt {

  private static final Duration AT_ONCE = Duration.ofMillis(900);

  private Prompt() {}

  /** Sends the result of the job, its refusal, or 202 with {@code {"job"}} while it goes on. */
  static void reply(Context context, Job job) throws InterruptedException {
    Optional<Event> last = job.await(AT_ONCE);
    if (last.isEmpty()) {
      Reply.json(context.status(202), JsonNodeFactory.instance.objectNode().put("job", job.id()));
    } else {
      Reply.json(context.status(statusOf(last.get())), last.get().data());
    }
  }

  /** Sends the result of the job or its refusal, however long it takes within its budget. */
  static void replyInTheEnd(Context context, Job job, Budget budget) throws InterruptedException {
    Event last = job.await(budget.time().multipliedBy(2)).orElseThrow();
    Reply.json(context.status(statusOf(last)), last.data());
  }

  private static int statusOf(Event last) {
    return last.name().equals("done") ? 200 : last.data().path("status").asInt(422);
  }
}
