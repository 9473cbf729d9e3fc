package rootwright.composing.option;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;

/** The numbers among answers: a count of 3, a residue 3 and the value 3 are the same choice. */
final class Numbers {

  /** Real numbers, and sets of them number by number, ascending; then the rest by its text. */
  static final Comparator<Answer> ASCENDING = Numbers::compare;

  private Numbers() {}

  /** The single number an answer is, if it is one. */
  static Optional<ExactValue> in(Answer answer) {
    if (answer instanceof Answer.Exact exact) {
      return Optional.of(exact.value());
    } else if (answer instanceof Answer.Count count) {
      return Optional.of(new RationalValue(Rational.of(count.number())));
    } else if (answer instanceof Answer.Residue residue) {
      return Optional.of(new RationalValue(Rational.of(residue.value())));
    }
    return Optional.empty();
  }

  /** The rational number an answer is, if it is one. */
  static Optional<Rational> rational(Answer answer) {
    return in(answer)
        .flatMap(
            number ->
                number instanceof RationalValue rational
                    ? Optional.of(rational.number())
                    : Optional.empty());
  }

  /** What is equal for equal choices and unlike for unlike ones, whatever form they came in. */
  static Object identity(Answer answer) {
    return in(answer).<Object>map(number -> number).orElse(answer);
  }

  /** The answer as it is printed. */
  static String text(Answer answer) {
    return UnicodeWriter.write(answer.formula());
  }

  /** The numbers an answer is made of, ascending, if it is made of real numbers. */
  private static Optional<List<ExactValue>> all(Answer answer) {
    List<ExactValue> numbers =
        answer instanceof Answer.Solutions solutions
            ? solutions.values()
            : in(answer).map(List::of).orElse(List.of());
    return numbers.isEmpty() || !numbers.stream().allMatch(ExactValue::isReal)
        ? Optional.empty()
        : Optional.of(numbers.stream().sorted(ExactValues::compareReal).toList());
  }

  private static int compare(Answer one, Answer other) {
    Optional<List<ExactValue>> a = all(one);
    Optional<List<ExactValue>> b = all(other);
    if (a.isPresent() && b.isPresent()) {
      return compare(a.get(), b.get());
    }
    return a.isPresent() ? -1 : b.isPresent() ? 1 : text(one).compareTo(text(other));
  }

  /** By the first number in which they differ; the shorter first if there is none. */
  private static int compare(List<ExactValue> one, List<ExactValue> other) {
    for (int k = 0; k < Math.min(one.size(), other.size()); k++) {
      int there = ExactValues.compareReal(one.get(k), other.get(k));
      if (there != 0) {
        return there;
      }
    }
    return Integer.compare(one.size(), other.size());
  }
}
