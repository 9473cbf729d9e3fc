package rootwright.composing.option;

import java.util.List;
import rootwright.working.answer.Answer;

/**
 * One choice offered to a student.
 *
 * @param value what stands there
 * @param slips the names of the wrong turnings that lead to it, the likeliest first, two that must
 *     be taken together joined by {@code " + "}; none for the key
 */
public record Option(Answer value, List<String> slips) {

  public Option {
    slips = List.copyOf(slips);
  }

  /** Whether this is the right answer. */
  public boolean isKey() {
    return slips.isEmpty();
  }
}
