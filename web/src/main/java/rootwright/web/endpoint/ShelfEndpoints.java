package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import rootwright.algebra.notation.UnreadableException;
import rootwright.bank.shelf.ShelfEntry;
import rootwright.bank.shelf.ShelfTwin;
import rootwright.desk.Desk;
import rootwright.desk.contract.FormulaForms;
import rootwright.desk.contract.TwinContract;
import rootwright.desk.list.ListedProblem;
import rootwright.web.job.Budget;
import rootwright.web.job.Job;
import rootwright.web.job.Jobs;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Given;

/** The shelf: what is kept there, and how other problems are related to it. */
public final class ShelfEndpoints {

  private final Desk desk;
  private final Jobs readings;
  private final Path shelf;

  /** For this desk; {@code shelf} is the file of the shelf, which need not exist yet. */
  public ShelfEndpoints(Desk desk, Jobs readings, Path shelf) {
    this.desk = desk;
    this.readings = readings;
    this.shelf = shelf;
  }

  /**
   * Adds {@code GET /api/shelf?words=}: the problems in whose line all words occur; {@code POST
   * /api/shelf}: a problem to be kept; and {@code POST /api/twins}: how the problem {@code later}
   * is related to {@code earlier}, or to the shelf if there is no such.
   */
  public void addTo(RoutesConfig routes) {
    routes.get("/api/shelf", this::find);
    routes.post("/api/shelf", this::shelve);
    routes.post("/api/twins", this::twins);
  }

  private void find(Context context) throws InterruptedException {
    String words = Optional.ofNullable(context.queryParam("words")).orElse("").strip();
    List<String> wanted = words.isEmpty() ? List.of() : List.of(words.split("\\s+"));
    briefly(
        context,
        () -> {
          ObjectNode reply = JsonNodeFactory.instance.objectNode();
          ArrayNode found = reply.putArray("problems");
          for (ShelfEntry entry : desk.onShelf(shelf, wanted)) {
            found.add(entry(entry));
          }
          return reply;
        });
  }

  /** Something done with the shelf that takes no long time. */
  private void briefly(Context context, Callable<JsonNode> doing) throws InterruptedException {
    Job job = readings.start(Budget.READING, progress -> doing.call());
    Prompt.replyInTheEnd(context, job, Budget.READING);
  }

  /** A line of the shelf, with its formulas set if it can be read. */
  private ObjectNode entry(ShelfEntry entry) {
    ObjectNode node =
        JsonNodeFactory.instance.objectNode().put("line", entry.line()).put("text", entry.text());
    try {
      Optional<Statement> statement = ListedProblem.read(entry.text());
      if (statement.isPresent()) {
        Given given = desk.given(statement.get());
        node.put("query", StatementBody.query(statement.get()));
        FormulaForms.FOR_PAGES.write(node.putObject("given"), given.stated());
        FormulaForms.FOR_PAGES.write(node.putObject("find"), given.find());
      }
    } catch (UnreadableException remark) {
      // The shelf is a plain file, and its owner may have written anything on a line.
      node.retain("line", "text");
    }
    return node;
  }

  private void shelve(Context context) throws InterruptedException {
    Statement statement = StatementBody.read(Reply.body(context));
    briefly(
        context,
        () -> {
          Optional<ShelfTwin> there =
              desk.shelve(shelf, statement).stream()
                  .filter(twin -> twin.twin().relation().isRefused())
                  .findFirst();
          ObjectNode reply = JsonNodeFactory.instance.objectNode().put("kept", there.isEmpty());
          there.ifPresent(
              twin ->
                  reply.put("already", twin.entry().line()).put("relation", twin.twin().words()));
          return reply;
        });
  }

  private void twins(Context context) throws InterruptedException {
    JsonNode body = Reply.body(context);
    briefly(context, () -> related(body));
  }

  private ObjectNode related(JsonNode body) throws UnreadableException, IOException {
    Statement later = StatementBody.read(body.path("later"));
    if (body.path("earlier").isObject()) {
      Statement earlier = StatementBody.read(body.path("earlier"));
      return TwinContract.of(desk.table().relation(earlier, later));
    }
    return TwinContract.of(desk.table().relations(shelf, later));
  }
}
