package rootwright.press.paper;

/** How far a paper has come. */
public enum State {
  /** It may be changed, and nothing is promised of it. */
  DRAFT,
  /** Every key has been read from the statement that stands on the paper. */
  CHECKED,
  /** It has its code and never changes again. */
  FROZEN,
  /** It has been handed out. */
  PRINTED;

  /** Whether the paper may not change any more. */
  public boolean isFinal() {
    return this == FROZEN || this == PRINTED;
  }
}
