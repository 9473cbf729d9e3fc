package rootwright.composing.twin;

/** How two problems are the same in other clothes. */
public enum Relation {
  SAME("same problem", true),
  RENAMED("same problem renamed", true),
  SCALED("same problem scaled", true),
  MIRRORED("mirror image", true),
  REVERSED("reciprocal twin", true),
  REVERSED_AND_MIRRORED("mirrored reciprocal twin", true),
  SHIFTED("same problem shifted", false),
  SHIFTED_ROOTS("same roots shifted, another ask", false);

  private final String words;
  private final boolean refused;

  Relation(String words, boolean refused) {
    this.words = words;
    this.refused = refused;
  }

  /** The relation in a few words. */
  public String words() {
    return words;
  }

  /**
   * Whether a problem so related to one already used must not be offered as a new one; a shift is
   * work of its own for a student, so it is reported only.
   */
  public boolean isRefused() {
    return refused;
  }
}
