package rootwright.lesson.plan;

/**
 * One line of a step, all texts as typed, empty where absent.
 *
 * @param words what stands before the formula; formulas between backquotes
 * @param write the formula, which must be confirmed
 * @param think a formula that is an argument and is not confirmed
 * @param because the reason at the line's end
 * @param say what is said instead of the usual
 * @param place the line of the file, counted from 1; 0 if it never stood in one
 */
public record PlanLine(
    String words, String write, String think, String because, String say, int place) {

  /** Words alone. */
  public static PlanLine words(String words) {
    return new PlanLine(words, "", "", "", "", 0);
  }

  /** Words before a formula that is confirmed. */
  public static PlanLine written(String words, String write) {
    return new PlanLine(words, write, "", "", "", 0);
  }
}
