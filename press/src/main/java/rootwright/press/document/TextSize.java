package rootwright.press.document;

/**
 * The size of the running text. The larger two are for readers who need large print: the text is
 * set anew at that size, never a page enlarged.
 */
public enum TextSize {
  /** 11 points. */
  REGULAR(11),
  /** 18 points. */
  LARGE(18),
  /** 24 points. */
  GIANT(24);

  private final int points;

  TextSize(int points) {
    this.points = points;
  }

  /** In points of 1/72 inch. */
  public int points() {
    return points;
  }

  /** Whether this is a size for readers who need large print. */
  public boolean isLargePrint() {
    return this != REGULAR;
  }
}
