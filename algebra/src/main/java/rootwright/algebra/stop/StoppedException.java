package rootwright.algebra.stop;

/**
 * Thrown out of any long computation whose thread has been interrupted: whoever interrupted it no
 * longer wants the result. It may be thrown by every method that computes.
 */
public final class StoppedException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** A computation that was stopped. */
  public StoppedException() {
    super("the computation was stopped");
  }
}
