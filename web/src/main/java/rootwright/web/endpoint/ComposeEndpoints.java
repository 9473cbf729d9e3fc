package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.UnreadableException;
import rootwright.bank.shelf.ShelfTwin;
import rootwright.composing.blueprint.Blueprint;
import rootwright.composing.blueprint.Composed;
import rootwright.composing.blueprint.ComposingListener;
import rootwright.composing.blueprint.Composition;
import rootwright.composing.blueprint.ContradictoryBlueprintException;
import rootwright.composing.blueprint.Screened;
import rootwright.desk.Desk;
import rootwright.desk.contract.CompositionContract;
import rootwright.desk.contract.FormulaForms;
import rootwright.desk.table.ComposersTable;
import rootwright.web.job.Budget;
import rootwright.web.job.Jobs;
import rootwright.web.job.Progress;
import rootwright.web.reply.FaultException;
import rootwright.working.problem.Statement;

/** The composer's table: orders, siblings of a problem, and the shelf that keeps what is good. */
public final class ComposeEndpoints {

  private final Desk desk;
  private final Jobs jobs;
  private final Path shelf;

  /** For this desk; {@code shelf} is the file of the coach's shelf, which need not exist yet. */
  public ComposeEndpoints(Desk desk, Jobs jobs, Path shelf) {
    this.desk = desk;
    this.jobs = jobs;
    this.shelf = shelf;
  }

  /**
   * Adds {@code POST /api/compose}, {@code POST /api/sibling} and {@code POST /api/harder}, each of
   * which starts a job, and {@code POST /api/shelf}.
   */
  public void addTo(RoutesConfig routes) {
    routes.post("/api/compose", this::compose);
    routes.post("/api/sibling", this::sibling);
    routes.post("/api/harder", this::harder);
    routes.post("/api/shelf", this::shelve);
  }

  private void compose(Context context) {
    JsonNode body = Reply.body(context);
    Blueprint blueprint = BlueprintBody.read(body, desk.table());
    start(
        context,
        body,
        attention -> desk.table().compose(blueprint, known(body.path("besides")), attention));
  }

  /** What is on the shelf, and the problems that are on the page already. */
  private Set<String> known(JsonNode besides) throws UnreadableException, IOException {
    Set<String> known = new HashSet<>(desk.fingerprints(shelf));
    for (JsonNode problem : besides) {
      known.add(desk.table().fingerprint(StatementBody.read(problem)));
    }
    return known;
  }

  private void sibling(Context context) {
    JsonNode body = Reply.body(context);
    Statement statement = StatementBody.read(body);
    long seed = body.path("seed").asLong(1);
    start(context, body, attention -> desk.table().siblings(statement, 1, seed, attention));
  }

  private void harder(Context context) {
    JsonNode body = Reply.body(context);
    Statement statement = StatementBody.read(body);
    long seed = body.path("seed").asLong(1);
    start(
        context,
        body,
        attention -> desk.table().harder(statement, known(body.path("besides")), seed, attention));
  }

  private void shelve(Context context) throws UnreadableException, IOException {
    Optional<ShelfTwin> there =
        desk.shelve(shelf, StatementBody.read(Reply.body(context))).stream()
            .filter(twin -> twin.twin().relation().isRefused())
            .findFirst();
    var reply = JsonNodeFactory.instance.objectNode().put("kept", there.isEmpty());
    there.ifPresent(
        twin -> reply.put("already", twin.entry().line()).put("relation", twin.twin().words()));
    Reply.json(context, reply);
  }

  /** Something that composes with a scan. */
  private interface Composing {
    Composition with(ComposersTable.Attention attention) throws UnreadableException, IOException;
  }

  private void start(Context context, JsonNode body, Composing composing) {
    String job =
        jobs.start(JobName.in(body), Budget.SCAN, progress -> run(composing, progress)).id();
    Reply.json(context.status(202), JsonNodeFactory.instance.objectNode().put("job", job));
  }

  private static JsonNode run(Composing composing, Progress progress) throws Exception {
    try {
      ComposersTable.Attention attention =
          ComposersTable.Attention.NONE.until(progress::stopped).telling(new Telling(progress));
      return CompositionContract.of(composing.with(attention), FormulaForms.FOR_PAGES);
    } catch (ContradictoryBlueprintException contradictory) {
      throw Contradiction.asFault(contradictory);
    } catch (IllegalArgumentException beyond) {
      throw new FaultException(
          422, "out-of-range", "This order cannot be: " + beyond.getMessage() + ".");
    }
  }

  /** Tells the page how far an order is, and hands over every problem as soon as it is found. */
  private record Telling(Progress progress) implements ComposingListener {
    @Override
    public void screened(Screened sofar) {
      progress.at(
          sofar.examined(),
          sofar.candidates(),
          "%,d of %,d candidates looked at, %,d meet the wishes, %d of %d problems found"
              .formatted(
                  sofar.examined(),
                  sofar.candidates(),
                  sofar.passing(),
                  sofar.found(),
                  sofar.wanted()),
          CompositionContract.counts(sofar.counts(), sofar.rejected()));
    }

    @Override
    public void found(Composed problem) {
      progress.found(CompositionContract.problem(problem, FormulaForms.FOR_PAGES));
    }
  }
}
