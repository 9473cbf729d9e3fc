package rootwright.lesson.plan;

import java.util.List;
import rootwright.working.proof.Letters;

/**
 * The plan of a lesson, as it stands in its file.
 *
 * @param title of the lesson
 * @param topic the name of its topic
 * @param letters the roots with which facts are written out
 * @param minutes how long it may take
 * @param pace how fast it is spoken
 * @param aim what a student can do afterwards
 * @param known what must be known before
 * @param steps in order
 * @param minutesPlace the line of the file where the minutes stand; 0 if it never stood in one
 */
public record Plan(
    String title,
    String topic,
    Letters letters,
    int minutes,
    Pace pace,
    String aim,
    List<String> known,
    List<PlanStep> steps,
    int minutesPlace) {

  public Plan {
    known = List.copyOf(known);
    steps = List.copyOf(steps);
  }
}
