package rootwright.lesson.caption;

/**
 * The rules captions keep: at most two lines, of 42 characters (common practice is 32 to 42), at
 * least two seconds on the screen and at most the set words a minute (Described and Captioned Media
 * Program, Captioning Key, presentation rate), and no break inside a formula.
 */
public final class CaptionRules {

  /** Lines of a caption. */
  public static final int LINES = 2;

  /** Characters of a line. */
  public static final int LINE = 42;

  /** How long a caption stands at least, in milliseconds. */
  public static final int LEAST_MILLIS = 2000;

  private CaptionRules() {}
}
