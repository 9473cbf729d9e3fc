package rootwright.composing.blueprint;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.composing.scan.filter.AnswerShape;
import rootwright.composing.scan.filter.IntegerBetween;
import rootwright.composing.scan.filter.SmallDenominator;
import rootwright.composing.scan.filter.WantedNumber;
import rootwright.composing.scan.filter.WholeNumber;

/**
 * What the answer of a composed problem is to look like. Where the answer is a polynomial the wish
 * is about each of its coefficients, where it is several numbers about each of them.
 */
public sealed interface AnswerWish {

  /** Any answer. */
  record Any() implements AnswerWish {
    @Override
    public Optional<AnswerShape> shape() {
      return Optional.empty();
    }

    @Override
    public boolean holds(Rational number) {
      return true;
    }

    @Override
    public String text() {
      return "any";
    }
  }

  /** Any whole number. */
  record Whole() implements AnswerWish {
    @Override
    public Optional<AnswerShape> shape() {
      return Optional.of(new WholeNumber());
    }

    @Override
    public boolean holds(Rational number) {
      return number.isInteger();
    }

    @Override
    public String text() {
      return "whole";
    }
  }

  /** A whole number in a range, ends included: 0 to 999 for an answer grid. */
  record Between(long low, long high) implements AnswerWish {
    @Override
    public Optional<AnswerShape> shape() {
      return Optional.of(new IntegerBetween(low, high));
    }

    @Override
    public boolean holds(Rational number) {
      return number.isInteger()
          && number.compareTo(Rational.of(low)) >= 0
          && number.compareTo(Rational.of(high)) <= 0;
    }

    @Override
    public List<String> contradictions() {
      return low > high
          ? List.of("no whole number lies between %d and %d".formatted(low, high))
          : List.of();
    }

    @Override
    public String text() {
      return low + ".." + high;
    }
  }

  /** A fraction with a denominator up to this one; whole numbers included. */
  record Fraction(long largestDenominator) implements AnswerWish {
    @Override
    public Optional<AnswerShape> shape() {
      return Optional.of(new SmallDenominator(largestDenominator));
    }

    @Override
    public boolean holds(Rational number) {
      return number.denominator().bitLength() < Long.SIZE
          && number.denominator().longValueExact() <= largestDenominator;
    }

    @Override
    public List<String> contradictions() {
      return largestDenominator < 1
          ? List.of("no denominator is as small as %d".formatted(largestDenominator))
          : List.of();
    }

    @Override
    public String text() {
      return "/" + largestDenominator;
    }
  }

  /** Exactly this number, such as the year. */
  record Wanted(Rational number) implements AnswerWish {
    @Override
    public Optional<AnswerShape> shape() {
      return Optional.of(new WantedNumber(number));
    }

    @Override
    public boolean holds(Rational found) {
      return found.equals(number);
    }

    @Override
    public String text() {
      return "=" + number;
    }
  }

  /** What the scan looks for; empty if anything will do. */
  Optional<AnswerShape> shape();

  /** Whether one number is as wished. */
  boolean holds(Rational number);

  /** What no answer can be, one sentence each. */
  default List<String> contradictions() {
    return List.of();
  }

  /**
   * The wish as it is typed: {@code any}, {@code whole}, {@code 0..999}, {@code /12}, {@code =7}.
   */
  String text();

  /**
   * Reads what {@link #text} writes.
   *
   * @throws IllegalArgumentException if it is something else; says what would do
   */
  static AnswerWish parse(String text) {
    String wish = text.strip();
    int dots = wish.indexOf("..");
    try {
      if (wish.equals("any")) {
        return new Any();
      } else if (wish.equals("whole")) {
        return new Whole();
      } else if (wish.startsWith("/")) {
        return new Fraction(Long.parseLong(wish.substring(1).strip()));
      } else if (wish.startsWith("=")) {
        return new Wanted(Rational.parse(wish.substring(1).strip()));
      } else if (dots > 0) {
        return new Between(
            Long.parseLong(wish.substring(0, dots).strip()),
            Long.parseLong(wish.substring(dots + 2).strip()));
      }
    } catch (IllegalArgumentException | ArithmeticException noNumber) {
      // Falls through to the refusal below, which names the wish and what would do.
    }
    throw new IllegalArgumentException(
        "the answer cannot be wished as “%s”; write any, whole, 0..999, /12 or =2026"
            .formatted(text));
  }
}
