package rootwright.working.proof;

/** Thrown inside the checks where a formula has no value; becomes an undecided verdict. */
final class UnsayableException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  UnsayableException(String why) {
    super(why);
  }

  /** Why, in words. */
  String why() {
    String message = getMessage();
    return message == null ? "" : message;
  }
}
