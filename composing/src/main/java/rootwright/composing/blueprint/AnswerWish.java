package rootwright.composing.blueprint;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.composing.scan.candidate.CompiledExpression;
import rootwright.composing.scan.filter.AnswerFilter;
import rootwright.composing.scan.filter.AnswerShape;
import rootwright.composing.scan.filter.CandidateFilter;
import rootwright.composing.scan.filter.IntegerBetween;
import rootwright.composing.scan.filter.SmallDenominator;
import rootwright.composing.scan.filter.WantedNumber;
import rootwright.composing.scan.filter.WholeNumber;

/** What the answer of a composed problem is to look like. */
public sealed interface AnswerWish {

  /** Any whole number. */
  record Whole() implements AnswerWish {
    @Override
    public List<AnswerShape> shapes() {
      return List.of(new WholeNumber());
    }
  }

  /** A whole number in a range, ends included: 0 to 999 for an answer grid. */
  record Between(long low, long high) implements AnswerWish {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if it is empty
     */
    public Between {
      if (low > high) {
        throw new IllegalArgumentException(
            "no whole number lies between %d and %d".formatted(low, high));
      }
    }

    @Override
    public List<AnswerShape> shapes() {
      return List.of(new IntegerBetween(low, high));
    }
  }

  /** A fraction with a denominator up to this one; whole numbers included. */
  record Fraction(long largestDenominator) implements AnswerWish {
    @Override
    public List<AnswerShape> shapes() {
      return List.of(new SmallDenominator(largestDenominator));
    }
  }

  /** Exactly this number, such as the year. */
  record Wanted(Rational number) implements AnswerWish {
    @Override
    public List<AnswerShape> shapes() {
      return List.of(new WantedNumber(number));
    }
  }

  /** What the scan looks for. */
  List<AnswerShape> shapes();

  /** The filters that look for it. */
  default List<CandidateFilter> filters(CompiledExpression expression) {
    return shapes().stream()
        .map(shape -> (CandidateFilter) new AnswerFilter(expression, shape))
        .toList();
  }
}
