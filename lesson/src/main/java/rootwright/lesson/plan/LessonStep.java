package rootwright.lesson.plan;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.lesson.text.Phrase;

/**
 * A step of a lesson, everything in it confirmed or marked as an argument.
 *
 * @param kind what it is for
 * @param title the title of its slides
 * @param statement the problem; empty for other steps
 * @param polynomial the polynomial of the problem
 * @param lines in order
 * @param figure what is drawn, as typed in the plan
 * @param seconds time left to try it
 * @param roots the names of the roots in it
 * @param place the line of the file
 */
public record LessonStep(
    StepKind kind,
    String title,
    Phrase statement,
    Optional<Polynomial> polynomial,
    List<LessonLine> lines,
    String figure,
    int seconds,
    List<String> roots,
    int place) {

  public LessonStep {
    lines = List.copyOf(lines);
    roots = List.copyOf(roots);
  }
}
