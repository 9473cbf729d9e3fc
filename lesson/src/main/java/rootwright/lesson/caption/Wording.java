package rootwright.lesson.caption;

/** How formulas stand in captions. */
public enum Wording {
  /** As they are said: e two. A formula whose words do not fit a line stands as it is written. */
  SPOKEN,
  /** As they are written: e₂. */
  WRITTEN
}
