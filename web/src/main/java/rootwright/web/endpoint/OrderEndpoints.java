package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.math.BigInteger;
import java.util.Locale;
import java.util.Map;
import rootwright.algebra.notation.UnreadableException;
import rootwright.composing.blueprint.Blueprint;
import rootwright.composing.blueprint.ContradictoryBlueprintException;
import rootwright.composing.blueprint.KnownNames;
import rootwright.composing.blueprint.OrderEstimate;
import rootwright.desk.Desk;
import rootwright.desk.table.StoppedOrders;
import rootwright.web.job.Budget;
import rootwright.web.job.Job;
import rootwright.web.job.Jobs;

/** What an order can say, and what is known of one before it is placed. */
public final class OrderEndpoints {

  private static final int SAMPLE_MILLISECONDS = 120;

  private final Desk desk;
  private final Jobs readings;
  private final StoppedOrders stopped;

  /**
   * For this desk.
   *
   * @param readings has workers for orders that are being written
   * @param stopped where orders are kept that were stopped
   */
  public OrderEndpoints(Desk desk, Jobs readings, StoppedOrders stopped) {
    this.desk = desk;
    this.readings = readings;
    this.stopped = stopped;
  }

  /**
   * Adds {@code GET /api/order}: the families of asks, the routes and the slips that a wish may
   * name; {@code POST /api/order}: the order as YAML, and how many candidates meet its wishes;
   * {@code POST /api/order/read}: an order that was pasted as YAML, written out in full; {@code GET
   * /api/order/stopped} and {@code DELETE /api/order/stopped/NAME}: the orders that were stopped.
   */
  public void addTo(RoutesConfig routes) {
    routes.get("/api/order", this::words);
    routes.post("/api/order", this::weigh);
    routes.post("/api/order/read", this::read);
    routes.get("/api/order/stopped", this::stopped);
    routes.delete("/api/order/stopped/{name}", this::forget);
  }

  private void words(Context context) {
    ObjectNode reply = JsonNodeFactory.instance.objectNode();
    ArrayNode families = reply.putArray("families");
    KnownNames.families()
        .forEach((name, words) -> families.addObject().put("name", name).put("words", words));
    ArrayNode kinds = reply.putArray("kinds");
    KnownNames.kinds().forEach(kinds::add);
    Map<String, String> titles = desk.routes();
    ObjectNode routes = reply.putObject("routes");
    KnownNames.ROUTES.forEach(name -> routes.put(name, titles.getOrDefault(name, plain(name))));
    ObjectNode slips = reply.putObject("slips");
    KnownNames.SLIPS.forEach(name -> slips.put(name, plain(name)));
    Reply.json(context, reply);
  }

  private void read(Context context) {
    JsonNode body = Reply.body(context);
    Blueprint order = BlueprintBody.read(body.path("yaml").asText(""), desk.table());
    Reply.json(
        context,
        JsonNodeFactory.instance.objectNode().put("yaml", desk.table().blueprintAsYaml(order)));
  }

  private void stopped(Context context) throws IOException {
    ObjectNode reply = JsonNodeFactory.instance.objectNode();
    stopped.all().forEach(reply::put);
    Reply.json(context, reply);
  }

  private void forget(Context context) throws IOException {
    stopped.forget(context.pathParam("name"));
    stopped(context);
  }

  private static String plain(String name) {
    return name.replace('-', ' ');
  }

  private void weigh(Context context) throws InterruptedException {
    JsonNode body = Reply.body(context);
    Job job = readings.start(JobName.in(body), Budget.READING, progress -> weighed(body));
    Prompt.replyInTheEnd(context, job, Budget.READING);
  }

  private ObjectNode weighed(JsonNode body) throws UnreadableException {
    Blueprint order = BlueprintBody.read(body, desk.table());
    ObjectNode reply = JsonNodeFactory.instance.objectNode();
    reply.put("yaml", desk.table().blueprintAsYaml(order));
    OrderEstimate estimate;
    try {
      estimate = desk.table().estimate(order, SAMPLE_MILLISECONDS);
    } catch (ContradictoryBlueprintException contradictory) {
      reply.put("contradiction", Contradiction.inWords(contradictory));
      return reply;
    } catch (IllegalArgumentException beyond) {
      reply.put("contradiction", "This order cannot be: %s.".formatted(beyond.getMessage()));
      return reply;
    }
    BigInteger seconds = desk.table().secondsAtMost(estimate);
    reply.put("candidates", grouped(estimate.candidates()));
    reply.put("passing", grouped(estimate.passing()));
    reply.put("none", estimate.passing().signum() == 0);
    reply.put("seconds", seconds.min(BigInteger.valueOf(Integer.MAX_VALUE)).intValue());
    return reply;
  }

  private static String grouped(BigInteger number) {
    return String.format(Locale.ROOT, "%,d", number);
  }
}
