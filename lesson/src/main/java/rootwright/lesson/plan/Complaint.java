package rootwright.lesson.plan;

/**
 * What is wrong with a plan.
 *
 * @param line of the file, counted from 1; 0 if it never stood in one
 * @param text one sentence
 * @param found what stands there
 * @param mend what would do; empty if nothing can be said
 */
public record Complaint(int line, String text, String found, String mend) {

  /** As an error of the command line. */
  public String forReader() {
    String place = line > 0 ? "line %d: ".formatted(line) : "";
    String shown = found.isBlank() ? "" : "%n  %s".formatted(found);
    String advice = mend.isEmpty() ? "" : "%n  %s".formatted(mend);
    return place + text + shown + advice;
  }
}
