package rootwright.working.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;

/**
 * A place on the real line where roots are counted: an open interval, its ends left out.
 *
 * @param low its lower end, if it has one
 * @param high its upper end, if it has one
 */
public record RootPlace(Optional<Rational> low, Optional<Rational> high) {

  /** The whole real line. */
  public static final RootPlace REAL = new RootPlace(Optional.empty(), Optional.empty());

  /** The positive numbers. */
  public static final RootPlace POSITIVE = above(Rational.ZERO);

  /** The negative numbers. */
  public static final RootPlace NEGATIVE = below(Rational.ZERO);

  /**
   * Checks that the place is not empty.
   *
   * @throws IllegalArgumentException if the lower end is not below the upper one
   */
  public RootPlace {
    if (low.isPresent() && high.isPresent() && low.get().compareTo(high.get()) >= 0) {
      throw new IllegalArgumentException(
          "nothing lies between %s and %s".formatted(low.get(), high.get()));
    }
  }

  /** The numbers greater than one. */
  public static RootPlace above(Rational low) {
    return new RootPlace(Optional.of(low), Optional.empty());
  }

  /** The numbers less than one. */
  public static RootPlace below(Rational high) {
    return new RootPlace(Optional.empty(), Optional.of(high));
  }

  /** The numbers between two, these left out. */
  public static RootPlace between(Rational low, Rational high) {
    return new RootPlace(Optional.of(low), Optional.of(high));
  }

  /** Its ends, ascending. */
  public List<Rational> ends() {
    List<Rational> ends = new ArrayList<>();
    low.ifPresent(ends::add);
    high.ifPresent(ends::add);
    return ends;
  }

  /** Whether a number lies there; one that is not real lies nowhere. */
  public boolean contains(ExactValue value) {
    return value.isReal()
        && low.map(end -> ExactValues.compareReal(value, new RationalValue(end)) > 0).orElse(true)
        && high.map(end -> ExactValues.compareReal(value, new RationalValue(end)) < 0).orElse(true);
  }

  /** What the numbers there are called: "positive real numbers", "numbers between 0 and 4". */
  public String words() {
    if (equals(REAL)) {
      return "real numbers";
    } else if (equals(POSITIVE)) {
      return "positive real numbers";
    } else if (equals(NEGATIVE)) {
      return "negative real numbers";
    } else if (low.isPresent() && high.isPresent()) {
      return "numbers between %s and %s".formatted(text(low.get()), text(high.get()));
    }
    return low.map(end -> "numbers greater than " + text(end))
        .orElseGet(() -> "numbers less than " + text(high.orElseThrow()));
  }

  /** What is said of a number there: "real", "positive", "strictly between 0 and 4". */
  public String quality() {
    if (equals(REAL)) {
      return "real";
    } else if (equals(POSITIVE)) {
      return "positive";
    } else if (equals(NEGATIVE)) {
      return "negative";
    } else if (low.isPresent() && high.isPresent()) {
      return "strictly between %s and %s".formatted(text(low.get()), text(high.get()));
    }
    return low.map(end -> "greater than " + text(end))
        .orElseGet(() -> "less than " + text(high.orElseThrow()));
  }

  private static String text(Rational number) {
    return number.toString().replace('-', '−');
  }
}
