package rootwright.lesson.plan;

import java.util.List;

/**
 * A lesson that may be shown: a plan of which every line was looked at.
 *
 * @param plan as it stands in its file
 * @param steps in order
 */
public record Lesson(Plan plan, List<LessonStep> steps) {

  public Lesson {
    steps = List.copyOf(steps);
  }
}
