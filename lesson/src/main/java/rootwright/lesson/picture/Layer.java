package rootwright.lesson.picture;

import java.util.List;

/**
 * Marks that appear together.
 *
 * @param from the reveal with which they appear, counted from 0
 * @param label what they say, in words; empty if they say nothing by themselves
 * @param marks drawn in order
 */
public record Layer(int from, String label, List<Mark> marks) {
  public Layer {
    marks = List.copyOf(marks);
  }
}
