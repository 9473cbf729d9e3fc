package rootwright.algebra.notation;

/** Thrown where a text cannot be read; carries the {@link Refusal} that is shown to the person. */
public final class UnreadableException extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient Refusal refusal;

  /** With the refusal to show. */
  public UnreadableException(Refusal refusal) {
    super(refusal.text());
    this.refusal = refusal;
  }

  /** What is shown to the person. */
  public Refusal refusal() {
    return refusal;
  }
}
