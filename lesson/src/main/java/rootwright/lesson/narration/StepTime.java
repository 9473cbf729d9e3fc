package rootwright.lesson.narration;

import java.util.ArrayList;
import java.util.List;
import rootwright.lesson.plan.Complaint;
import rootwright.lesson.plan.LessonStep;
import rootwright.lesson.plan.Plan;

/**
 * How long one step of a lesson is.
 *
 * @param number of the step, from 0
 * @param step the step
 * @param millis its time
 * @param end when it is over, from the beginning
 * @param over by how much the end is past the wanted length; 0 if it is not
 */
public record StepTime(int number, LessonStep step, long millis, long end, long over) {

  /** The time of every step of a lesson. */
  public static List<StepTime> of(Script script) {
    List<LessonStep> steps = script.deck().lesson().steps();
    long wanted = 60_000L * script.deck().lesson().plan().minutes();
    List<StepTime> times = new ArrayList<>();
    long end = 0;
    for (int k = 0; k < steps.size(); k++) {
      int number = k;
      long millis =
          script.beats().stream()
              .filter(beat -> beat.beat().step() == number)
              .mapToLong(TimedBeat::millis)
              .sum();
      end += millis;
      times.add(new StepTime(k, steps.get(k), millis, end, Math.max(0, end - wanted)));
    }
    return times;
  }

  /** What is wrong with the time: the whole, and each step that ends too late. */
  public static List<Complaint> overruns(Script script) {
    Plan plan = script.deck().lesson().plan();
    List<Complaint> complaints = new ArrayList<>();
    for (StepTime time : of(script)) {
      if (time.over() > 0) {
        if (complaints.isEmpty()) {
          complaints.add(
              new Complaint(
                  plan.minutesPlace(),
                  "The lesson takes %s, longer than the %d minutes it may take."
                      .formatted(clock(script.millis()), plan.minutes()),
                  "",
                  "shorten a step below, or give it %d minutes"
                      .formatted((script.millis() + 59_999) / 60_000)));
        }
        complaints.add(
            new Complaint(
                time.step().place(),
                "“%s” takes %s and ends %s too late."
                    .formatted(time.step().title(), clock(time.millis()), clock(time.over())),
                "",
                ""));
      }
    }
    return complaints;
  }

  /** Minutes and seconds: {@code 4:05}. */
  public static String clock(long millis) {
    long seconds = (millis + 500) / 1000;
    return "%d:%02d".formatted(seconds / 60, seconds % 60);
  }
}
