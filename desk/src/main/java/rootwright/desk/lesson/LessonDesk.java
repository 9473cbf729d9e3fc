package rootwright.desk.lesson;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import rootwright.algebra.notation.UnreadableException;
import rootwright.lesson.caption.Wording;
import rootwright.lesson.film.FilmListener;
import rootwright.lesson.film.FilmMaker;
import rootwright.lesson.narration.Script;
import rootwright.lesson.narration.StepTime;
import rootwright.lesson.plan.BadPlanException;
import rootwright.lesson.plan.Complaint;
import rootwright.lesson.plan.Plan;
import rootwright.lesson.plan.PlanCheck;
import rootwright.lesson.plan.PlanMaker;
import rootwright.lesson.plan.PlanReader;
import rootwright.lesson.plan.PlanWriter;
import rootwright.lesson.show.LessonFile;
import rootwright.lesson.show.LessonOutput;
import rootwright.lesson.show.LessonOutputs;
import rootwright.lesson.slide.DeckMaker;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.proof.Letters;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;
import rootwright.working.topic.Topic;
import rootwright.working.topic.Topics;

/** Preparing a lesson: one method for each thing. Safe to use from several threads. */
public final class LessonDesk {

  private static final int MOST_KNOWN = 200;

  private final Kinds kinds = new Kinds();
  private final Map<Problem, Solution> known = new ConcurrentHashMap<>();

  /** The topics by name, with their titles. */
  public Map<String, String> topics() {
    Map<String, String> titles = new LinkedHashMap<>();
    Topics.ALL.forEach(topic -> titles.put(topic.name(), topic.title()));
    return titles;
  }

  /** The forms of a lesson by name, with what they are. */
  public Map<String, String> forms() {
    Map<String, String> titles = new LinkedHashMap<>();
    LessonOutputs.ALL.forEach(output -> titles.put(output.name(), output.title()));
    return titles;
  }

  /**
   * The plan of a lesson as the text of its file.
   *
   * @throws IllegalArgumentException if there is no such topic, or the roots cannot be so many
   * @throws UnreadableException if a problem cannot be read
   */
  public String plan(LessonOrder order) throws UnreadableException {
    Topic topic =
        Topics.named(order.topic())
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "there is no topic “%s”; topics are %s"
                            .formatted(order.topic(), String.join(", ", topics().keySet()))));
    Letters letters =
        order.roots().isEmpty() ? Letters.usual(topic.usualDegree()) : new Letters(order.roots());
    Plan plan =
        new PlanMaker(this::solved)
            .plan(
                new PlanMaker.Order(
                    topic,
                    letters,
                    order.minutes(),
                    order.pace(),
                    order.length(),
                    order.exercises()));
    return PlanWriter.write(plan);
  }

  /**
   * The lesson of a plan: every formula in it is checked again, everything is timed.
   *
   * @param planText the text of its file
   * @throws BadPlanException if something in it is not so; names each line
   */
  public Script lesson(String planText, Wording wording) throws BadPlanException {
    return Script.of(
        DeckMaker.deck(new PlanCheck(this::solved).lesson(PlanReader.read(planText))), wording);
  }

  /** The time of every step. */
  public List<StepTime> times(Script script) {
    return StepTime.of(script);
  }

  /** What is wrong with the time, if the lesson is longer than it may be. */
  public List<Complaint> overruns(Script script) {
    return StepTime.overruns(script);
  }

  /**
   * The lesson in some form.
   *
   * @throws IllegalArgumentException if there is no such form
   */
  public Stream<LessonFile> files(Script script, String form) {
    LessonOutput output =
        LessonOutputs.named(form)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "there is no form “%s”; forms are %s"
                            .formatted(form, String.join(", ", forms().keySet()))));
    return output.files(script);
  }

  /** How a film would be made on this machine, and about how long that takes. */
  public FilmForecast forecast(Script script) {
    FilmMaker maker = FilmMaker.best();
    return new FilmForecast(maker.title(), maker.estimate(script), script.millis());
  }

  /**
   * Makes a silent film of the lesson.
   *
   * @param file ends in .mp4
   * @param listener is told after each picture
   * @throws IOException if it cannot be written
   */
  public void film(Script script, Path file, FilmListener listener) throws IOException {
    FilmMaker.best().make(script, file, listener);
  }

  private Solution solved(Problem problem) {
    if (known.size() > MOST_KNOWN) {
      known.clear();
    }
    Solution solution = known.get(problem);
    if (solution == null) {
      solution = kinds.solve(problem, ClassProfile.EVERYTHING);
      known.put(problem, solution);
    }
    return solution;
  }
}
