package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.stop.StoppedException;
import rootwright.desk.contract.LessonContract;
import rootwright.desk.lesson.LessonDesk;
import rootwright.desk.lesson.LessonOrder;
import rootwright.lesson.caption.Wording;
import rootwright.lesson.narration.Script;
import rootwright.lesson.plan.BadPlanException;
import rootwright.lesson.plan.Pace;
import rootwright.lesson.show.LessonFile;
import rootwright.web.job.Budget;
import rootwright.web.job.Jobs;
import rootwright.web.job.Progress;
import rootwright.web.reply.FaultException;
import rootwright.working.proof.Proof;
import rootwright.working.topic.Exercise;

/** The board plan: a lesson from its topic to its slides. */
public final class LessonEndpoints {

  private static final int LONGEST_PLAN = 100_000;

  private final LessonDesk desk;
  private final Jobs jobs;
  private final Path films;

  /** For this desk; {@code films} is the folder of the films, which need not exist yet. */
  public LessonEndpoints(LessonDesk desk, Jobs jobs, Path films) {
    this.desk = desk;
    this.jobs = jobs;
    this.films = films;
  }

  /**
   * Adds {@code GET /api/lesson}: topics and forms; {@code POST /api/lesson/plan}: the text of a
   * plan; {@code POST /api/lesson}: the lesson of a plan, or what is wrong with it; {@code POST
   * /api/lesson/file/FORM}: the lesson as a file, as {@code {"name", "type", "base64"}}; {@code
   * POST /api/lesson/film}: a silent film of it, which is long work; and {@code GET
   * /api/lesson/films/NAME}: a film that was made.
   */
  public void addTo(RoutesConfig routes) {
    routes.get("/api/lesson", this::words);
    routes.post("/api/lesson/plan", this::plan);
    routes.post("/api/lesson", this::lesson);
    routes.post("/api/lesson/file/{form}", this::file);
    routes.post("/api/lesson/film", this::film);
    routes.get("/api/lesson/films/{name}", this::made);
  }

  private void words(Context context) {
    ObjectNode reply = JsonNodeFactory.instance.objectNode();
    ObjectNode topics = reply.putObject("topics");
    desk.topics().forEach(topics::put);
    ObjectNode forms = reply.putObject("forms");
    desk.forms().forEach(forms::put);
    Reply.json(context, reply);
  }

  private void plan(Context context) throws InterruptedException {
    JsonNode body = Reply.body(context);
    LessonOrder order = order(body);
    start(context, body, () -> JsonNodeFactory.instance.objectNode().put("plan", desk.plan(order)));
  }

  private void lesson(Context context) throws InterruptedException {
    JsonNode body = Reply.body(context);
    String plan = text(body);
    start(
        context,
        body,
        () -> {
          Script script = desk.lesson(plan, Wording.SPOKEN);
          return LessonContract.of(script, desk.overruns(script));
        });
  }

  private void file(Context context) throws InterruptedException {
    JsonNode body = Reply.body(context);
    String plan = text(body);
    String form = context.pathParam("form");
    start(
        context,
        body,
        () -> {
          LessonFile file =
              desk.files(desk.lesson(plan, wording(body)), form).findFirst().orElseThrow();
          return JsonNodeFactory.instance
              .objectNode()
              .put("name", file.name())
              .put("type", file.mediaType())
              .put("base64", Base64.getEncoder().encodeToString(file.bytes()));
        });
  }

  private void film(Context context) {
    JsonNode body = Reply.body(context);
    String plan = text(body);
    String job =
        jobs.start(
                JobName.in(body), Budget.SCAN, progress -> done(() -> filmed(plan, body, progress)))
            .id();
    Reply.json(context.status(202), JsonNodeFactory.instance.objectNode().put("job", job));
  }

  private ObjectNode filmed(String plan, JsonNode body, Progress progress)
      throws UnreadableException, BadPlanException {
    Script script = desk.lesson(plan, wording(body));
    String name = "lesson-%s.mp4".formatted(UUID.randomUUID().toString().substring(0, 8));
    try {
      Files.createDirectories(films);
      desk.film(
          script,
          films.resolve(name),
          (pictures, all) -> {
            if (progress.stopped()) {
              throw new StoppedException();
            }
            progress.at(pictures, all, "%d of %d pictures".formatted(pictures, all));
          });
    } catch (IOException unwritable) {
      throw new FaultException(409, "unwritable", "The film cannot be written.");
    }
    return JsonNodeFactory.instance.objectNode().put("film", name);
  }

  private void made(Context context) throws IOException {
    String name = context.pathParam("name");
    Path film = films.resolve(name);
    if (!name.matches("lesson-[0-9a-f]{8}\\.mp4") || !Files.isReadable(film)) {
      throw new FaultException(404, "no-film", "There is no such film.");
    }
    context
        .header("Content-Disposition", "attachment; filename=\"lesson.mp4\"")
        .contentType("video/mp4")
        .result(Files.newInputStream(film));
  }

  private static Wording wording(JsonNode body) {
    return body.path("formulas").asText("").equals("written") ? Wording.WRITTEN : Wording.SPOKEN;
  }

  /** Something done with a plan. */
  private interface Doing {
    ObjectNode done() throws UnreadableException, BadPlanException;
  }

  private void start(Context context, JsonNode body, Doing doing) throws InterruptedException {
    Prompt.reply(context, jobs.start(JobName.in(body), Budget.PROBLEM, progress -> done(doing)));
  }

  private static ObjectNode done(Doing doing) throws UnreadableException {
    try {
      return doing.done();
    } catch (BadPlanException bad) {
      return LessonContract.refused(bad.complaints());
    } catch (IllegalArgumentException beyond) {
      throw new FaultException(422, "out-of-range", capital(beyond.getMessage()) + ".");
    }
  }

  private static String text(JsonNode body) {
    String plan = body.path("plan").asText("");
    if (plan.length() > LONGEST_PLAN) {
      throw new FaultException(
          422,
          "too-long",
          "The plan has %d characters; at most %d are read."
              .formatted(plan.length(), LONGEST_PLAN));
    }
    return plan;
  }

  private static LessonOrder order(JsonNode body) {
    List<String> roots = new ArrayList<>();
    for (String name : body.path("roots").asText("").split(",")) {
      if (!name.isBlank()) {
        roots.add(name.strip());
      }
    }
    List<Exercise> exercises = new ArrayList<>();
    for (String line : body.path("problems").asText("").lines().toList()) {
      String[] parts = line.split(";", -1);
      if (parts.length >= 2) {
        exercises.add(
            new Exercise(
                parts[0].strip(), parts[1].strip(), parts.length > 2 ? parts[2].strip() : ""));
      } else if (!line.isBlank()) {
        throw new FaultException(
            422,
            "no-ask",
            "“%s” has no ask: write the polynomial, a semicolon and the ask.".formatted(line));
      }
    }
    return new LessonOrder(
        body.path("topic").asText(""),
        roots,
        minutes(body),
        body.path("level").asText("").equals("upper") ? Pace.UPPER : Pace.MIDDLE,
        length(body),
        exercises);
  }

  private static int minutes(JsonNode body) {
    int minutes = body.path("minutes").asInt(0);
    if (minutes < 1 || minutes > 600) {
      throw new FaultException(
          422, "out-of-range", "A lesson takes from 1 to 600 minutes, in whole numbers.");
    }
    return minutes;
  }

  private static Proof.Length length(JsonNode body) {
    String wanted = body.path("proof").asText("board");
    for (Proof.Length length : Proof.Length.values()) {
      if (length.name().toLowerCase(Locale.ROOT).equals(wanted)) {
        return length;
      }
    }
    return Proof.Length.BOARD;
  }

  private static String capital(@org.jspecify.annotations.Nullable String text) {
    return text == null || text.isEmpty()
        ? "This cannot be"
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
