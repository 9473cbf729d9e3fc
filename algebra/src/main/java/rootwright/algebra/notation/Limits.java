package rootwright.algebra.notation;

/**
 * How much is read and expanded before a clear refusal: far above anything a coach types, far below
 * what could stall the program.
 */
public final class Limits {

  /** The longest text that is read, in characters. */
  public static final int LENGTH = 20_000;

  /** The most digits one number may have. */
  public static final int DIGITS = 2_000;

  /** How deep brackets, powers, fractions and roots may stand within each other. */
  public static final int NESTING = 120;

  /** The highest degree to which brackets are multiplied out. */
  public static final int DEGREE = 2_000;

  /** The most binary digits a coefficient may have while brackets are multiplied out. */
  public static final int BITS = 100_000;

  /** The most multiplications of 32-bit words that one multiplying-out may cost. */
  public static final long WORK = 400_000_000L;

  /** The largest index a root sign may have. */
  public static final int RADICAL_INDEX = 1_000;

  private Limits() {}
}
