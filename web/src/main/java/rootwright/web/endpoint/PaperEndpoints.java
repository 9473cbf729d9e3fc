package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.Desk;
import rootwright.desk.paper.AnswerForm;
import rootwright.desk.paper.FiledItem;
import rootwright.desk.paper.FiledPaper;
import rootwright.desk.paper.PaperFile;
import rootwright.desk.paper.PaperTray;
import rootwright.press.output.UnprintableException;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Complaint;
import rootwright.web.job.Budget;
import rootwright.web.job.Job;
import rootwright.web.job.Jobs;
import rootwright.web.job.Progress;
import rootwright.web.reply.FaultException;
import rootwright.working.problem.Statement;

/** The paper tray: papers from draft to print, each a plain file in the coach's folder. */
public final class PaperEndpoints {

  private static final int MOST_THREADS = 8;

  private final Desk desk;
  private final Jobs jobs;
  private final PaperTray tray;
  private final Path shelf;
  private final PaperView view;

  /** For a desk; {@code tray} is the folder of the papers, {@code shelf} the file of the shelf. */
  public PaperEndpoints(Desk desk, Jobs jobs, Path tray, Path shelf) {
    this.desk = desk;
    this.jobs = jobs;
    this.tray = new PaperTray(tray);
    this.shelf = shelf;
    this.view = new PaperView(desk);
  }

  /** Adds everything under {@code /api/papers}. */
  public void addTo(RoutesConfig routes) {
    routes.get("/api/papers", this::list);
    routes.post("/api/papers", this::draft);
    routes.get("/api/papers/{name}", this::show);
    routes.post("/api/papers/{name}/item", this::edit);
    routes.post("/api/papers/{name}/check", this::check);
    routes.post("/api/papers/{name}/freeze", this::freeze);
    routes.post("/api/papers/{name}/correct", this::correct);
    routes.post("/api/papers/{name}/print", this::print);
    routes.get("/api/papers/{name}/files/{file}", this::download);
  }

  private void list(Context context) throws IOException {
    ObjectNode reply = JsonNodeFactory.instance.objectNode();
    ArrayNode papers = reply.putArray("papers");
    for (Map.Entry<String, FiledPaper> paper : tray.all().entrySet()) {
      papers.add(PaperView.line(paper.getKey(), paper.getValue()));
    }
    ArrayNode kept = reply.putArray("shelf");
    desk.onShelf(shelf, List.of()).forEach(entry -> kept.add(entry.text()));
    Reply.json(context, reply);
  }

  private void show(Context context) throws InterruptedException {
    String name = name(context);
    briefly(context, () -> view.of(name, tray.file(name).read(), tray));
  }

  /** Something done with a paper that takes no long time. */
  private void briefly(Context context, Done<ObjectNode> doing) throws InterruptedException {
    Job job = jobs.start(Budget.READING, progress -> said(doing));
    Prompt.replyInTheEnd(context, job, Budget.READING);
  }

  private void draft(Context context) throws InterruptedException {
    JsonNode body = Reply.body(context);
    start(
        context,
        body,
        progress -> {
          progress.at(0, 0, "Drafting");
          FiledPaper drafted = desk.papers().draft(PaperOrderBody.read(body));
          String name = tray.freshName(drafted);
          tray.file(name).write(drafted);
          return view.of(name, drafted, tray);
        });
  }

  private void edit(Context context) throws InterruptedException {
    JsonNode body = Reply.body(context);
    String name = name(context);
    briefly(
        context,
        () -> {
          PaperFile file = tray.file(name);
          FiledPaper edited =
              file.read().edited(body.path("item").asText(""), item -> changed(item, body));
          file.write(edited);
          return view.of(name, edited, tray);
        });
  }

  private static FiledItem changed(FiledItem item, JsonNode body) {
    int points = body.path("points").asInt(0);
    FiledItem worth = points > 0 && points < 1000 ? item.worth(points) : item;
    if (!(worth instanceof FiledItem.Problem problem)) {
      return worth;
    }
    Statement before = problem.statement();
    FiledItem.Problem changed =
        problem.withStatement(
            new Statement(
                body.path("given").asText(before.polynomial()).strip(),
                body.path("find").asText(before.find()).strip(),
                before.roots(),
                before.unknown()));
    if (body.has("form")) {
      changed = changed.withForm(AnswerForm.named(body.path("form").asText()));
    }
    if (body.has("options")) {
      // Options that stand for the statement as it was are chosen anew at the next check.
      List<String> options =
          Stream.of(body.path("options").asText().split(","))
              .map(String::strip)
              .filter(option -> !option.isEmpty())
              .toList();
      changed = changed.withOptions(options);
    }
    return changed;
  }

  private void check(Context context) throws InterruptedException {
    step(context, "Checking", filed -> desk.papers().checked(filed));
  }

  private void freeze(Context context) throws InterruptedException {
    step(context, "Checking once more and freezing", filed -> desk.papers().frozen(filed));
  }

  /** One step of a paper towards print. */
  private interface Step {
    FiledPaper of(FiledPaper filed) throws BlockedException;
  }

  private void step(Context context, String words, Step step) throws InterruptedException {
    String name = name(context);
    start(
        context,
        Reply.body(context),
        progress -> {
          progress.at(0, 0, words);
          PaperFile file = tray.file(name);
          FiledPaper next = step.of(file.read());
          file.write(next);
          return view.of(name, next, tray);
        });
  }

  private void correct(Context context) throws InterruptedException {
    String name = name(context);
    String cause = Reply.body(context).path("cause").asText("").strip();
    briefly(
        context,
        () -> {
          if (cause.isEmpty()) {
            throw new IllegalArgumentException("say in one sentence why there is a new edition");
          }
          PaperFile file = tray.file(name);
          String later = tray.nameOfNextEdition(name, file.read().edition() + 1);
          FiledPaper next =
              desk.papers()
                  .correct(file, tray.file(later), LocalDate.now(ZoneId.systemDefault()), cause);
          return view.of(later, next, tray);
        });
  }

  private void print(Context context) throws InterruptedException {
    String name = name(context);
    JsonNode body = Reply.body(context);
    start(
        context,
        body,
        progress -> {
          int threads = Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors());
          List<String> files =
              desk.papers()
                  .print(
                      tray.file(name),
                      PaperOrderBody.print(body),
                      tray.printed(name),
                      (done, all) -> progress.at(done, all, "%d of %d files".formatted(done, all)),
                      threads);
          ObjectNode reply = view.of(name, tray.file(name).read(), tray);
          files.forEach(reply.putArray("just-printed")::add);
          return reply;
        });
  }

  private void download(Context context) {
    Path file = said(() -> tray.printed(name(context), context.pathParam("file")));
    context.header(
        "Content-Disposition", "attachment; filename=\"%s\"".formatted(file.getFileName()));
    context.contentType("application/octet-stream");
    context.result(said(() -> Files.readAllBytes(file)));
  }

  private static String name(Context context) {
    return context.pathParam("name");
  }

  /** Something done with papers. */
  private interface Done<T> {
    T now() throws BlockedException, IOException, UnreadableException, InterruptedException;
  }

  /** Something done with papers that tells how far it is. */
  private interface DoneInSteps {
    JsonNode with(Progress progress)
        throws BlockedException, IOException, UnreadableException, InterruptedException;
  }

  private void start(Context context, JsonNode body, DoneInSteps work) throws InterruptedException {
    Prompt.reply(
        context,
        jobs.start(JobName.in(body), Budget.SCAN, progress -> said(() -> work.with(progress))));
  }

  /** Does it; what is in the way of a paper becomes a sentence for the coach. */
  private static <T> T said(Done<T> done) {
    try {
      return done.now();
    } catch (BlockedException blocked) {
      throw refused(
          blocked.complaints().stream().map(Complaint::sentence).collect(Collectors.joining("\n")));
    } catch (UnreadableException unreadable) {
      throw refused(
          unreadable.refusal().text() + " It stands in “" + unreadable.refusal().input() + "”.");
    } catch (IllegalArgumentException | IllegalStateException | UnprintableException wish) {
      throw refused(String.valueOf(wish.getMessage()));
    } catch (IOException unusable) {
      throw refused("The file of the paper cannot be used.");
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new FaultException(409, "stopped", "It was stopped; what is printed is kept.");
    }
  }

  private static FaultException refused(String text) {
    return new FaultException(409, "blocked", text);
  }
}
