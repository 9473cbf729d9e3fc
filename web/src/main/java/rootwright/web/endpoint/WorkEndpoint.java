package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.stop.StoppedException;
import rootwright.desk.Desk;
import rootwright.desk.contract.ChoicesContract;
import rootwright.desk.contract.FormulaForms;
import rootwright.desk.contract.SolutionContract;
import rootwright.desk.keep.KeptProfile;
import rootwright.web.job.Budget;
import rootwright.web.job.Job;
import rootwright.web.job.Jobs;
import rootwright.web.job.Progress;
import rootwright.web.keep.RecentProblems;
import rootwright.web.keep.Visit;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

/** The main job: a problem in, a checked answer with its worked routes out. */
public final class WorkEndpoint {

  private final Desk desk;
  private final Solver solver;
  private final Jobs jobs;
  private final KeptProfile profile;
  private final RecentProblems recent;

  /** For this desk, where {@code solver} works the problems, with what the desk remembers. */
  public WorkEndpoint(
      Desk desk, Solver solver, Jobs jobs, KeptProfile profile, RecentProblems recent) {
    this.desk = desk;
    this.solver = solver;
    this.jobs = jobs;
    this.profile = profile;
    this.recent = recent;
  }

  /**
   * Adds {@code POST /api/work}: the solution, if it is found at once; otherwise the name of a job
   * that goes on looking for it; with {@code patient} for longer than usual.
   */
  public void addTo(RoutesConfig routes) {
    routes.post("/api/work", this::work);
  }

  private void work(Context context) throws InterruptedException {
    JsonNode body = Reply.body(context);
    Statement statement = StatementBody.read(body);
    ClassProfile taught = new ClassProfile(profile.without());
    Budget budget = body.path("patient").asBoolean() ? Budget.PATIENT : Budget.PROBLEM;
    Job job = jobs.start(JobName.in(body), budget, progress -> solve(statement, taught, progress));
    Prompt.reply(context, job);
  }

  private JsonNode solve(Statement statement, ClassProfile taught, Progress progress)
      throws UnreadableException, InterruptedException {
    progress.at(0, 0, "Working this out");
    Solution solution = solver.work(statement, taught);
    ObjectNode reply = reply(desk, statement, solution);
    if (!progress.stopped()) {
      recent.remember(
          new Visit(
              StatementBody.query(statement),
              solution.statement(),
              UnicodeWriter.write(solution.answer().formula())));
    }
    return reply;
  }

  /** Everything that a page shows of a solution. */
  public static ObjectNode reply(Desk desk, Statement statement, Solution solution) {
    ObjectNode reply = SolutionContract.of(solution, FormulaForms.FOR_PAGES);
    reply.set("choices", ChoicesContract.ofEveryNumber(solution, FormulaForms.FOR_PAGES));
    try {
      FigureJson.add(reply, desk, statement, solution);
    } catch (StoppedException unwanted) {
      throw unwanted;
    } catch (RuntimeException ours) {
      // An answer that is checked is worth showing without its figure; the log has the fault.
      Jobs.unexpected(ours);
    }
    return reply;
  }
}
