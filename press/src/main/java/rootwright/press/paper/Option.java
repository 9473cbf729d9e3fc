package rootwright.press.paper;

import java.util.List;
import rootwright.working.answer.Answer;

/**
 * One of the answers offered.
 *
 * @param value what it says
 * @param slips the wrong turnings that lead to it; none for the right answer
 */
public record Option(Answer value, List<String> slips) {

  public Option {
    slips = List.copyOf(slips);
  }
}
