package rootwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.lesson.FilmForecast;
import rootwright.desk.lesson.LessonDesk;
import rootwright.lesson.narration.Script;
import rootwright.lesson.narration.StepTime;
import rootwright.lesson.plan.BadPlanException;
import rootwright.lesson.plan.Complaint;
import rootwright.lesson.show.LessonFile;

/** {@code ./rootwright board}: a lesson, from its plan to slides, narration and captions. */
@Command(
    name = "board",
    description = "A lesson: its plan, board plan, slides, narration and captions.")
final class BoardCommand implements Callable<Integer> {

  /** What is done for each word, and the forms it makes where none are asked for. */
  private static final Map<String, List<String>> FORMS = forms();

  private final Console console;
  private final LessonDesk desk;

  @Parameters(
      index = "0",
      paramLabel = "WHAT",
      description =
          "topics, plan, check, slides, captions, narration, chalk (the board plan), lesson"
              + " (all of these), or video (a silent film).")
  String what = "";

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "PLAN",
      description = "The file of a plan; without, one is made by the options.")
  @Nullable Path planFile;

  @Option(
      names = "--out",
      paramLabel = "PATH",
      description = "Where the files go; without, text is printed.")
  @Nullable Path out;

  @Option(
      names = "--as",
      split = ",",
      paramLabel = "FORM",
      description =
          "Forms: html, pdf, pdf-steps, svg, png, vtt, srt, chapters, narration, chalk, plan.")
  List<String> forms = List.of();

  @Option(names = "--json", description = "One JSON object.")
  boolean json;

  @Mixin LessonOptions options = new LessonOptions();

  BoardCommand(Console console, LessonDesk desk) {
    this.console = console;
    this.desk = desk;
  }

  private static Map<String, List<String>> forms() {
    Map<String, List<String>> forms = new LinkedHashMap<>();
    forms.put("slides", List.of("html"));
    forms.put("captions", List.of("vtt", "srt", "chapters"));
    forms.put("narration", List.of("narration"));
    forms.put("chalk", List.of("chalk"));
    forms.put("lesson", List.of());
    return forms;
  }

  @Override
  public Integer call() throws IOException {
    BoardReport report = new BoardReport(console, json);
    ExitStatus status = status(report);
    report.close();
    return status.code();
  }

  private ExitStatus status(BoardReport report) throws IOException {
    try {
      if (what.equals("video")) {
        return video(report);
      } else if (what.equals("topics")) {
        report.topics(desk.topics());
        return ExitStatus.DONE;
      } else if (what.equals("plan")) {
        return plan(report);
      } else if (what.equals("check")) {
        return check(report);
      } else if (FORMS.containsKey(what)) {
        return lesson(report);
      }
      report.refusal(
          "board can do topics, plan, check, %s, video: %s"
              .formatted(String.join(", ", FORMS.keySet()), what));
    } catch (UnreadableException unreadable) {
      report.refusal(unreadable.refusal());
    } catch (BadPlanException bad) {
      bad.complaints().forEach(report::complaint);
    } catch (IllegalArgumentException wish) {
      report.refusal(String.valueOf(wish.getMessage()));
    }
    return ExitStatus.UNREADABLE;
  }

  private ExitStatus plan(BoardReport report) throws IOException, UnreadableException {
    String plan = desk.plan(options.order());
    if (out == null) {
      report.text("plan", plan);
    } else {
      write(out, plan.getBytes(StandardCharsets.UTF_8), report);
    }
    return ExitStatus.DONE;
  }

  private ExitStatus check(BoardReport report)
      throws IOException, UnreadableException, BadPlanException {
    Script script = desk.lesson(planText(), options.wording());
    report.times(desk.times(script), script);
    List<Complaint> late = desk.overruns(script);
    late.forEach(report::complaint);
    return late.isEmpty() ? ExitStatus.DONE : ExitStatus.UNREADABLE;
  }

  private ExitStatus lesson(BoardReport report)
      throws IOException, UnreadableException, BadPlanException {
    Script script = desk.lesson(planText(), options.wording());
    List<String> wanted = wanted();
    for (String form : wanted) {
      for (LessonFile file : (Iterable<LessonFile>) desk.files(script, form)::iterator) {
        if (out == null && wanted.size() == 1 && file.mediaType().startsWith("text/plain")) {
          report.text(form, new String(file.bytes(), StandardCharsets.UTF_8));
        } else {
          write((out == null ? Path.of(".") : out).resolve(file.name()), file.bytes(), report);
        }
      }
    }
    desk.overruns(script).stream().limit(1).forEach(report::warning);
    return ExitStatus.DONE;
  }

  private ExitStatus video(BoardReport report)
      throws IOException, UnreadableException, BadPlanException {
    Script script = desk.lesson(planText(), options.wording());
    Path folder = out == null ? Path.of(".") : out;
    Path film = folder.toString().endsWith(".mp4") ? folder : folder.resolve("lesson.mp4");
    Path parent = film.toAbsolutePath().getParent();
    if (parent != null) {
      Files.createDirectories(parent);
    }
    FilmForecast forecast = desk.forecast(script);
    console
        .err()
        .printf(
            "%s of film; about %s by %s%n",
            StepTime.clock(forecast.length()),
            StepTime.clock(forecast.millis()),
            forecast.encoder());
    desk.film(
        script,
        film,
        (done, all) -> {
          if (console.terminal()) {
            console.err().printf("\r%d of %d pictures", done, all);
            console.err().flush();
          }
        });
    if (console.terminal()) {
      console.err().println();
    }
    report.file(film);
    return ExitStatus.DONE;
  }

  private List<String> wanted() {
    if (!forms.isEmpty()) {
      return forms;
    }
    List<String> usual = FORMS.getOrDefault(what, List.of());
    return usual.isEmpty() ? List.copyOf(desk.forms().keySet()) : usual;
  }

  private String planText() throws IOException, UnreadableException {
    if (planFile == null) {
      return desk.plan(options.order());
    }
    if (!Files.isRegularFile(planFile)) {
      throw new IllegalArgumentException("no plan can be read at " + planFile);
    }
    return Files.readString(planFile, StandardCharsets.UTF_8);
  }

  private static void write(Path path, byte[] bytes, BoardReport report) throws IOException {
    Path folder = path.toAbsolutePath().getParent();
    if (folder != null) {
      Files.createDirectories(folder);
    }
    Files.write(path, bytes);
    report.file(path);
  }
}
