package rootwright.working.check;

import java.util.OptionalInt;

/** What one check says of one claim. */
public sealed interface Verdict {

  /**
   * The claim is confirmed.
   *
   * @param method what was done, a few words
   * @param digits to how many decimal digits, where it was numerical
   */
  record Confirmed(String method, OptionalInt digits) implements Verdict {}

  /**
   * The claim is wrong.
   *
   * @param why what was found instead
   */
  record Refuted(String why) implements Verdict {}

  /**
   * This check cannot say.
   *
   * @param why what stood in the way
   */
  record Undecided(String why) implements Verdict {}

  /** Confirmed by an exact method. */
  static Verdict confirmed(String method) {
    return new Confirmed(method, OptionalInt.empty());
  }

  /** Confirmed to a number of decimal digits. */
  static Verdict confirmed(String method, int digits) {
    return new Confirmed(method, OptionalInt.of(digits));
  }

  /** Whether the claim is confirmed. */
  default boolean isConfirmed() {
    return this instanceof Confirmed;
  }
}
