package rootwright.working.solve;

/**
 * Thrown where a value was found that one of the two checks can neither confirm nor refute. Nothing
 * is wrong, but nothing may be shown.
 */
public final class UnconfirmedException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** With one plain sentence. */
  public UnconfirmedException(String why) {
    super(why);
  }
}
