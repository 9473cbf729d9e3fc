package rootwright.lesson.plan;

/**
 * How fast a lesson is spoken, in words a minute. 110 to 130 for new algebra and 140 to 150 for
 * what is repeated are common practice; captions of 120 to 130 words a minute for the lower and
 * middle grades, slightly more for the upper ones, are the rule of the Captioning Key (presentation
 * rate). Nothing is said faster than its caption may be read.
 *
 * @param fresh for what is new
 * @param recap for what is known
 * @param captions the most for captions
 */
public record Pace(int fresh, int recap, int captions) {

  /** Middle grades. */
  public static final Pace MIDDLE = new Pace(120, 130, 130);

  /** Upper grades. */
  public static final Pace UPPER = new Pace(130, 145, 145);

  private static final int SLOWEST = 60;
  private static final int FASTEST = 170;

  /**
   * @throws IllegalArgumentException if a number is outside 60 to 170, or something is said faster
   *     than its caption may be read
   */
  public Pace {
    for (int words : new int[] {fresh, recap, captions}) {
      if (words < SLOWEST || words > FASTEST) {
        throw new IllegalArgumentException(
            "a pace is from %d to %d words a minute: %d".formatted(SLOWEST, FASTEST, words));
      }
    }
    if (Math.max(fresh, recap) > captions) {
      throw new IllegalArgumentException(
          "said at %d words a minute, but captions may have %d"
              .formatted(Math.max(fresh, recap), captions));
    }
  }

  /** The words a minute for a kind of step. */
  public int of(StepKind kind) {
    return kind.recap() ? recap : fresh;
  }
}
