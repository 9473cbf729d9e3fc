package rootwright.working.subject;

import java.util.List;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.pasted.PastedProblem;
import rootwright.working.problem.Statement;

/**
 * A statement as it was typed, with the conditions taken off its ask: {@code k if r = 2s, k > 0}
 * asks for k under two conditions.
 *
 * @param statement what was typed
 * @param ask what is wanted, without the conditions
 * @param conditions what stands behind the word "if" (or "given", "when", "where"), one text for
 *     each piece between commas, semicolons or the word "and"; empty if there is no such word
 */
public record Inquiry(Statement statement, String ask, List<String> conditions) {

  public Inquiry {
    conditions = List.copyOf(conditions);
  }

  /**
   * Takes the conditions off the ask. Words and commas inside brackets separate nothing. A whole
   * sentence is cut into polynomial and ask before, "find the value of" and the like is left out;
   * the place of an error is told in what is left.
   *
   * @throws UnreadableException if a sentence contradicts what is given beside it
   */
  public static Inquiry of(Statement typed) throws UnreadableException {
    Statement statement = PastedProblem.plain(typed);
    List<String> parts = ConditionText.split(statement.find());
    return new Inquiry(statement, parts.get(0), parts.subList(1, parts.size()));
  }

  /** The text in the place of the polynomial, without blanks round it. */
  public String polynomial() {
    return statement.polynomial().strip();
  }
}
