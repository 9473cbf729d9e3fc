package rootwright.algebra.enclosure;

/**
 * A ball was to be divided by a ball that contains zero, so that no ball holds all quotients. A
 * smaller divisor ball may help; if the divisor is exactly zero, none will.
 */
public final class BallContainsZeroException extends ArithmeticException {

  private static final long serialVersionUID = 1L;

  /** Names the divisor. */
  public BallContainsZeroException(String divisor) {
    super("the divisor may be zero: " + divisor);
  }
}
