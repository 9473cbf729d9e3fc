package rootwright.composing.option;

import java.util.Comparator;
import java.util.Optional;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;

/** The numbers among answers: a count of 3, a residue 3 and the value 3 are the same choice. */
final class Numbers {

  /** Real numbers ascending, then everything else by its text. */
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

  private static int compare(Answer one, Answer other) {
    Optional<ExactValue> a = in(one).filter(ExactValue::isReal);
    Optional<ExactValue> b = in(other).filter(ExactValue::isReal);
    if (a.isPresent() && b.isPresent()) {
      return ExactValues.compareReal(a.get(), b.get());
    }
    return a.isPresent() ? -1 : b.isPresent() ? 1 : text(one).compareTo(text(other));
  }
}
