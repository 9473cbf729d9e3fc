package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import rootwright.desk.Desk;
import rootwright.desk.contract.FormulaForms;
import rootwright.desk.contract.ReviewContract;
import rootwright.web.job.Budget;
import rootwright.web.job.Jobs;
import rootwright.web.reply.FaultException;
import rootwright.working.problem.Statement;

/** Somebody's working of a problem, judged line by line. */
public final class CheckEndpoint {

  /** More lines than a solution has; beyond, something else was pasted by mistake. */
  private static final int MOST_LINES = 500;

  private final Desk desk;
  private final Jobs jobs;

  /** For this desk. */
  public CheckEndpoint(Desk desk, Jobs jobs) {
    this.desk = desk;
    this.jobs = jobs;
  }

  /** Adds {@code POST /api/check}: a statement with {@code lines}, one text with line breaks. */
  public void addTo(RoutesConfig routes) {
    routes.post("/api/check", this::check);
  }

  private void check(Context context) throws InterruptedException {
    JsonNode body = Reply.body(context);
    Statement statement = StatementBody.read(body);
    List<String> lines = body.path("lines").asText("").lines().toList();
    if (lines.size() > MOST_LINES) {
      throw new FaultException(
          422,
          "too-many-lines",
          "These are %d lines; at most %d are checked at once."
              .formatted(lines.size(), MOST_LINES));
    }
    Prompt.reply(
        context,
        jobs.start(
            JobName.in(body),
            Budget.PROBLEM,
            progress -> {
              progress.at(0, 0, "Reading the lines");
              return ReviewContract.of(desk.review(statement, lines), FormulaForms.FOR_PAGES);
            }));
  }
}
