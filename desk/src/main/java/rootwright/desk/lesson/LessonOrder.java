package rootwright.desk.lesson;

import java.util.List;
import rootwright.lesson.plan.Pace;
import rootwright.working.proof.Proof;
import rootwright.working.topic.Exercise;

/**
 * What a coach orders for a lesson.
 *
 * @param topic the name of a topic
 * @param roots names for the roots; as many as the topic wants if empty
 * @param minutes how long it may take
 * @param pace how fast it is spoken
 * @param length of the proofs
 * @param exercises the worked example first, the one to try last; those of the topic if empty
 */
public record LessonOrder(
    String topic,
    List<String> roots,
    int minutes,
    Pace pace,
    Proof.Length length,
    List<Exercise> exercises) {

  public LessonOrder {
    roots = List.copyOf(roots);
    exercises = List.copyOf(exercises);
  }

  /** The usual lesson on a topic. */
  public static LessonOrder usual(String topic) {
    return new LessonOrder(topic, List.of(), 45, Pace.MIDDLE, Proof.Length.BOARD, List.of());
  }
}
