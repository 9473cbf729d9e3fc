package rootwright.working.check.exact;

/** Thrown inside the exact check where a formula has no value in the algebra of the roots. */
public final class Unevaluable extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final Cause cause;
  private final String sentence;

  /** Why there is no value. */
  public enum Cause {
    /** A denominator vanishes at a root, or identically. */
    ZERO_DENOMINATOR,
    /** The formula has a part that this algebra does not know. */
    UNKNOWN_FORM,
    /** The computation would be larger than the stated limit. */
    TOO_LARGE
  }

  /** With the cause and one plain sentence. */
  public Unevaluable(Cause cause, String sentence) {
    super(sentence);
    this.cause = cause;
    this.sentence = sentence;
  }

  /** Why there is no value, one plain sentence. */
  public String sentence() {
    return sentence;
  }

  /** What kind of thing stood in the way. */
  public Cause reason() {
    return cause;
  }

  static Unevaluable form(String sentence) {
    return new Unevaluable(Cause.UNKNOWN_FORM, sentence);
  }

  static Unevaluable zeroDenominator(String sentence) {
    return new Unevaluable(Cause.ZERO_DENOMINATOR, sentence);
  }

  static Unevaluable tooLarge(String sentence) {
    return new Unevaluable(Cause.TOO_LARGE, sentence);
  }
}
