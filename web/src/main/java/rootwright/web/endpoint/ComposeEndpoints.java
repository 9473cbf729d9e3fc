package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import rootwright.algebra.notation.UnreadableException;
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
import rootwright.desk.table.ScanFile;
import rootwright.desk.table.StoppedOrders;
import rootwright.web.job.Budget;
import rootwright.web.job.Jobs;
import rootwright.web.job.Progress;
import rootwright.web.job.Work;
import rootwright.web.reply.FaultException;
import rootwright.working.problem.Statement;

/** The composer's table: orders, climbs and siblings of a problem. */
public final class ComposeEndpoints {

  private final Desk desk;
  private final Jobs jobs;
  private final Path shelf;
  private final StoppedOrders stopped;

  /**
   * For this desk.
   *
   * @param shelf the file of the coach's shelf, which need not exist yet
   * @param stopped where orders are kept that were stopped
   */
  public ComposeEndpoints(Desk desk, Jobs jobs, Path shelf, StoppedOrders stopped) {
    this.desk = desk;
    this.jobs = jobs;
    this.shelf = shelf;
    this.stopped = stopped;
  }

  /**
   * Adds {@code POST} of {@code /api/compose}, {@code /api/sibling}, {@code /api/harder} and {@code
   * /api/climb}, each of which starts a job; an order that is stopped is kept, and the same order
   * goes on from there.
   */
  public void addTo(RoutesConfig routes) {
    routes.post("/api/compose", this::compose);
    routes.post("/api/sibling", this::sibling);
    routes.post("/api/harder", this::harder);
    routes.post("/api/climb", this::climb);
  }

  private void compose(Context context) {
    JsonNode body = Reply.body(context);
    Blueprint blueprint = BlueprintBody.read(body, desk.table());
    boolean kept = body.path("kept").asBoolean();
    start(
        context,
        body,
        attention -> {
          Set<String> known = known(body.path("besides"));
          return kept
              ? gone(blueprint, known, attention)
              : desk.table().compose(blueprint, known, attention);
        });
  }

  /** Goes on with an order from where it was stopped, if it was, and keeps how far it comes. */
  private Composition gone(
      Blueprint blueprint, Set<String> known, ComposersTable.Attention attention)
      throws UnreadableException, IOException {
    ScanFile file = stopped.fileOf(desk.table().blueprintAsYaml(blueprint));
    Composition composition = desk.table().compose(blueprint, known, attention.keepingIn(file));
    if (composition.ending() == Composition.Ending.STOPPED) {
      file.write();
    } else {
      file.finish();
    }
    return composition;
  }

  private void climb(Context context) {
    JsonNode body = Reply.body(context);
    int degree = body.path("degree").asInt(0);
    int size = body.path("size").asInt(0);
    Set<String> kinds = new TreeSet<>();
    body.path("kinds").forEach(kind -> kinds.add(kind.asText()));
    long seed = body.path("seed").asLong(1);
    run(
        context,
        body,
        progress ->
            CompositionContract.of(
                desk.table()
                    .climb(
                        degree,
                        size,
                        kinds,
                        seed,
                        known(body.path("besides")),
                        ComposersTable.Attention.NONE
                            .until(progress::stopped)
                            .telling(new Climbing(progress))),
                FormulaForms.FOR_PAGES));
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

  /** Something that composes with a scan. */
  private interface Composing {
    Composition with(ComposersTable.Attention attention) throws UnreadableException, IOException;
  }

  private void start(Context context, JsonNode body, Composing composing) {
    run(
        context,
        body,
        progress ->
            CompositionContract.of(
                composing.with(
                    ComposersTable.Attention.NONE
                        .until(progress::stopped)
                        .telling(new Telling(progress))),
                FormulaForms.FOR_PAGES));
  }

  private void run(Context context, JsonNode body, Work work) {
    String job =
        jobs.start(JobName.in(body), Budget.SCAN, progress -> refusing(work, progress)).id();
    Reply.json(context.status(202), JsonNodeFactory.instance.objectNode().put("job", job));
  }

  private static JsonNode refusing(Work work, Progress progress) throws Exception {
    try {
      return work.run(progress);
    } catch (ContradictoryBlueprintException contradictory) {
      throw Contradiction.asFault(contradictory);
    } catch (IllegalArgumentException beyond) {
      throw new FaultException(
          422, "out-of-range", "This order cannot be: " + beyond.getMessage() + ".");
    }
  }

  /** Tells the page how far a climb is; what is found on the way need not come to be in it. */
  private record Climbing(Progress progress) implements ComposingListener {
    @Override
    public void screened(Screened sofar) {
      progress.at(0, 0, "%,d candidates of the present ask looked at".formatted(sofar.examined()));
    }

    @Override
    public void found(Composed problem) {}
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
