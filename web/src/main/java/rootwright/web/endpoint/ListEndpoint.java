package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.stop.StoppedException;
import rootwright.desk.contract.FormulaForms;
import rootwright.desk.contract.RefusalContract;
import rootwright.desk.contract.SolutionContract;
import rootwright.desk.keep.KeptProfile;
import rootwright.desk.list.ListedProblem;
import rootwright.web.job.Budget;
import rootwright.web.job.Jobs;
import rootwright.web.job.Progress;
import rootwright.web.job.TooLongException;
import rootwright.web.job.Turn;
import rootwright.web.reply.Fault;
import rootwright.web.reply.FaultException;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

/** A whole list of problems, worked line by line; a bad line does not hold up the others. */
public final class ListEndpoint {

  /** More lines than a coach's lists have; what is found of them is kept on the page. */
  private static final int MOST_LINES = 2000;

  private final Solver solver;
  private final Jobs jobs;
  private final KeptProfile profile;
  private final ScheduledThreadPoolExecutor clock =
      new ScheduledThreadPoolExecutor(1, ListEndpoint::quiet);

  /** Where {@code solver} works the problems, for the class of the page. */
  public ListEndpoint(Solver solver, Jobs jobs, KeptProfile profile) {
    this.solver = solver;
    this.jobs = jobs;
    this.profile = profile;
    clock.setRemoveOnCancelPolicy(true);
  }

  /**
   * Adds {@code POST /api/list}: {@code lines} is one text with line breaks, whose first line has
   * the number {@code from}, 1 if that is not said. Of each line that is a problem one finding is
   * told: its {@code line}, and its {@code error} or {@code record}, the object that a script gets,
   * with the statement and the answer set for the page.
   */
  public void addTo(RoutesConfig routes) {
    routes.post("/api/list", this::start);
  }

  private void start(Context context) {
    JsonNode body = Reply.body(context);
    List<String> lines = body.path("lines").asText("").lines().toList();
    int from = body.path("from").asInt(1);
    if (lines.size() > MOST_LINES) {
      throw new FaultException(
          422,
          "too-many-lines",
          "These are %,d lines; at most %,d are worked at once."
              .formatted(lines.size(), MOST_LINES));
    }
    ClassProfile taught = new ClassProfile(profile.without());
    String job =
        jobs.start(JobName.in(body), Budget.SCAN, progress -> all(lines, from, taught, progress))
            .id();
    Reply.json(context.status(202), JsonNodeFactory.instance.objectNode().put("job", job));
  }

  private JsonNode all(List<String> lines, int from, ClassProfile taught, Progress progress)
      throws Exception {
    Turn turn = new Turn(clock, progress, Budget.PROBLEM.time());
    int worked = 0;
    int refused = 0;
    for (int k = 0; k < lines.size() && !progress.stopped(); k++) {
      progress.at(k, lines.size(), said(k, lines.size(), worked, refused));
      Optional<ObjectNode> found = line(lines.get(k), taught, turn);
      if (found.isPresent()) {
        boolean bad = found.get().has("error");
        worked += bad ? 0 : 1;
        refused += bad ? 1 : 0;
        progress.found(found.get().put("line", from + k));
      }
    }
    return JsonNodeFactory.instance.objectNode().put("worked", worked).put("refused", refused);
  }

  private static String said(int done, int lines, int worked, int refused) {
    return "%,d of %,d lines looked at, %,d worked, %,d not"
        .formatted(done, lines, worked, refused);
  }

  /** What is found of one line; nothing if there is no problem on it. */
  private Optional<ObjectNode> line(String text, ClassProfile taught, Turn turn) throws Exception {
    ObjectNode found = JsonNodeFactory.instance.objectNode().put("text", text.strip());
    try {
      Optional<Statement> statement = ListedProblem.read(text);
      if (statement.isEmpty()) {
        return Optional.empty();
      }
      found.put("query", StatementBody.query(statement.get()));
      Solution solution = turn.spentOn(() -> solver.work(statement.get(), taught));
      found.setAll(SolutionContract.line(solution));
      found.set("record", SolutionContract.of(solution, FormulaForms.FOR_SCRIPTS));
    } catch (UnreadableException unreadable) {
      found.setAll(RefusalContract.of(unreadable.refusal()));
    } catch (TooLongException late) {
      found.setAll(
          RefusalContract.of(
              new Refusal("too-long", String.valueOf(late.getMessage()), text, 0, "", "")));
    } catch (StoppedException stopped) {
      throw stopped;
    } catch (RuntimeException | StackOverflowError ours) {
      Fault fault = Jobs.unexpected(ours);
      found.setAll(RefusalContract.of(new Refusal(fault.code(), fault.text(), text, 0, "", "")));
    }
    return Optional.of(found);
  }

  private static Thread quiet(Runnable task) {
    Thread thread = new Thread(task, "rootwright-turns");
    thread.setDaemon(true);
    return thread;
  }
}
