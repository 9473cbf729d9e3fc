package rootwright.working.step;

import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;

/**
 * An interval of real numbers, possibly a single number.
 *
 * @param low its lower end, a real number; absent if it has none
 * @param lowIn whether the lower end belongs to it
 * @param high its upper end; absent if it has none
 * @param highIn whether the upper end belongs to it
 */
public record LetterInterval(
    Optional<ExactValue> low, boolean lowIn, Optional<ExactValue> high, boolean highIn) {

  /** A single number. */
  public static LetterInterval point(ExactValue value) {
    return new LetterInterval(Optional.of(value), true, Optional.of(value), true);
  }

  /** Whether it is a single number. */
  public boolean isPoint() {
    return low.isPresent() && low.equals(high);
  }

  /** Whether a rational number lies in it, the ends counting as they are. */
  public boolean contains(Rational number) {
    return contains(new RationalValue(number));
  }

  /** Whether a real number lies in it, the ends counting as they are. */
  public boolean contains(ExactValue number) {
    boolean above =
        low.isEmpty()
            || ExactValues.compareReal(number, low.get()) > 0
            || (lowIn && number.equals(low.get()));
    boolean below =
        high.isEmpty()
            || ExactValues.compareReal(number, high.get()) < 0
            || (highIn && number.equals(high.get()));
    return above && below;
  }
}
