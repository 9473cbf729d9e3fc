package rootwright.press.document;

/** Who is given the paper. */
public enum Audience {
  /** Students before or while they work: nothing that gives an answer away may be inside. */
  STUDENT,
  /** The coach and colleagues: keys and scoring are allowed. */
  COACH
}
