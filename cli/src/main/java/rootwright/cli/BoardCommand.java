package rootwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rootwright.algebra.notation.ErrorCaret;
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
    try {
      if (what.equals("video")) {
        return video();
      } else if (what.equals("topics")) {
        desk.topics().forEach((name, title) -> console.out().printf("%-28s %s%n", name, title));
        return ExitStatus.DONE.code();
      } else if (what.equals("plan")) {
        return plan();
      } else if (what.equals("check") || FORMS.containsKey(what)) {
        return lesson();
      }
      throw new IllegalArgumentException(
          "board can do topics, plan, check, %s, video: %s"
              .formatted(String.join(", ", FORMS.keySet()), what));
    } catch (UnreadableException unreadable) {
      console.err().println(ErrorCaret.write(unreadable.refusal()));
    } catch (BadPlanException bad) {
      bad.complaints().forEach(this::complain);
    } catch (IllegalArgumentException wish) {
      console.err().println("error: " + wish.getMessage());
    }
    return ExitStatus.UNREADABLE.code();
  }

  private int plan() throws IOException, UnreadableException {
    String plan = desk.plan(options.order());
    if (out == null) {
      console.out().print(plan);
      console.out().flush();
    } else {
      write(out, plan.getBytes(StandardCharsets.UTF_8));
    }
    return ExitStatus.DONE.code();
  }

  private int lesson() throws IOException, UnreadableException, BadPlanException {
    Script script = desk.lesson(planText(), options.wording());
    if (what.equals("check")) {
      times(script);
      List<Complaint> late = desk.overruns(script);
      late.forEach(this::complain);
      return (late.isEmpty() ? ExitStatus.DONE : ExitStatus.UNREADABLE).code();
    }
    List<String> wanted = wanted();
    for (String form : wanted) {
      for (LessonFile file : (Iterable<LessonFile>) desk.files(script, form)::iterator) {
        if (out == null && wanted.size() == 1 && file.mediaType().startsWith("text/plain")) {
          console.out().print(new String(file.bytes(), StandardCharsets.UTF_8));
          console.out().flush();
        } else {
          write((out == null ? Path.of(".") : out).resolve(file.name()), file.bytes());
        }
      }
    }
    desk.overruns(script).stream()
        .limit(1)
        .forEach(late -> console.err().println("warning: " + late.forReader()));
    return ExitStatus.DONE.code();
  }

  private int video() throws IOException, UnreadableException, BadPlanException {
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
    console.out().println(film);
    return ExitStatus.DONE.code();
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

  private void times(Script script) {
    List<String> lines = new ArrayList<>();
    for (StepTime time : desk.times(script)) {
      lines.add(
          "%6s  %6s  %s%s"
              .formatted(
                  StepTime.clock(time.end() - time.millis()),
                  StepTime.clock(time.millis()),
                  time.step().kind().title().equals(time.step().title())
                      ? time.step().title()
                      : time.step().kind().title() + ": " + time.step().title(),
                  time.over() > 0 ? "   (" + StepTime.clock(time.over()) + " too late)" : ""));
    }
    console.out().println("  from    time  step");
    lines.forEach(console.out()::println);
    console
        .out()
        .printf(
            "%6s          end; %d slides, %d minutes wanted%n",
            StepTime.clock(script.millis()),
            script.deck().slides().size(),
            script.deck().lesson().plan().minutes());
  }

  private void complain(Complaint complaint) {
    console.err().println("error: " + complaint.forReader());
  }

  private void write(Path path, byte[] bytes) throws IOException {
    Path folder = path.toAbsolutePath().getParent();
    if (folder != null) {
      Files.createDirectories(folder);
    }
    Files.write(path, bytes);
    console.out().println(path);
  }
}
