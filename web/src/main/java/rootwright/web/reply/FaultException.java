package rootwright.web.reply;

/** Thrown where a request cannot be served; carries the {@link Fault} to send back. */
public final class FaultException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient Fault fault;

  /** With the message to send back. */
  public FaultException(int status, String code, String text) {
    super(text);
    this.fault = new Fault(status, code, text);
  }

  /** What goes back to the page. */
  public Fault fault() {
    return fault;
  }
}
