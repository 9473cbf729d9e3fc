package rootwright.working.solve;

import java.util.OptionalInt;
import rootwright.working.check.Verdict;

/**
 * What the second, independent check said of the answer.
 *
 * @param method what was done, a few words: "on certified enclosures of the roots"
 * @param agrees whether it confirms the answer
 * @param digits how many decimal digits it confirms, where it is numerical
 */
public record SecondOpinion(String method, boolean agrees, OptionalInt digits) {

  /** The opinion where no value exists. */
  public static final SecondOpinion NOTHING_TO_CHECK = by("there is no value to check");

  /** The answer is confirmed by a method that is not numerical. */
  public static SecondOpinion by(String method) {
    return new SecondOpinion(method, true, OptionalInt.empty());
  }

  /** The answer is confirmed to so many decimal digits. */
  public static SecondOpinion by(String method, int digits) {
    return new SecondOpinion(method, true, OptionalInt.of(digits));
  }

  /** The answer is confirmed by what a check said of it. */
  public static SecondOpinion of(Verdict.Confirmed confirmed) {
    return new SecondOpinion(confirmed.method(), true, confirmed.digits());
  }
}
