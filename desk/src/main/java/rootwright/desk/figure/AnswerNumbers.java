package rootwright.desk.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.value.ExactValue;
import rootwright.working.answer.Answer;

/** The numbers of an answer as decimals. */
final class AnswerNumbers {

  private static final int DIGITS = 12;

  private AnswerNumbers() {}

  /** The exact values of an answer; empty if it is something else. */
  static List<ExactValue> values(Answer answer) {
    if (answer instanceof Answer.Exact exact) {
      return List.of(exact.value());
    } else if (answer instanceof Answer.Values values) {
      return values.values();
    } else if (answer instanceof Answer.Solutions solutions) {
      return solutions.values();
    }
    return List.of();
  }

  /** Those that are real, as decimals. */
  static List<Double> decimals(Answer answer) {
    return values(answer).stream().filter(ExactValue::isReal).map(AnswerNumbers::decimal).toList();
  }

  /** One real value as a decimal. */
  static double decimal(ExactValue value) {
    return Sampled.of(value.enclosure(DIGITS).realCentre().toRational());
  }

  /** The ranges of an answer; those with an end that cannot be drawn are left out. */
  static List<LetterPicture.Span> spans(Answer answer) {
    if (!(answer instanceof Answer.Interval interval)) {
      return List.of();
    }
    Stream<Formula> pieces =
        interval.condition() instanceof Formula.Listing listing
            ? listing.items().stream()
            : Stream.of(interval.condition());
    return pieces.flatMap(piece -> span(piece).stream()).toList();
  }

  private static Optional<LetterPicture.Span> span(Formula piece) {
    if (!(piece instanceof Formula.Relation relation)) {
      return Optional.empty();
    }
    List<Double> ends = new ArrayList<>(relation.sides().stream().map(Sampled::of).toList());
    List<Formula.Comparison> signs = relation.comparisons();
    int letter = letterIn(ends);
    if (letter < 0 || ends.size() > 3) {
      return Optional.empty();
    }
    if (ends.size() == 3) {
      return letter == 1
          ? Optional.of(
              new LetterPicture.Span(
                  ends.get(0), ends.get(2), isIn(signs.get(0)), isIn(signs.get(1))))
          : Optional.empty();
    }
    double end = ends.get(1 - letter);
    boolean in = isIn(signs.get(0));
    return switch (signs.get(0)) {
      case LESS, AT_MOST ->
          Optional.of(
              letter == 0
                  ? new LetterPicture.Span(Double.NEGATIVE_INFINITY, end, false, in)
                  : new LetterPicture.Span(end, Double.POSITIVE_INFINITY, in, false));
      case GREATER, AT_LEAST ->
          Optional.of(
              letter == 0
                  ? new LetterPicture.Span(end, Double.POSITIVE_INFINITY, in, false)
                  : new LetterPicture.Span(Double.NEGATIVE_INFINITY, end, false, in));
      case EQUAL -> Optional.of(new LetterPicture.Span(end, end, true, true));
      default -> Optional.empty();
    };
  }

  /** The place of the only side that is no number, or −1. */
  private static int letterIn(List<Double> ends) {
    int found = -1;
    for (int k = 0; k < ends.size(); k++) {
      if (ends.get(k).isNaN()) {
        if (found >= 0) {
          return -1;
        }
        found = k;
      }
    }
    return found;
  }

  private static boolean isIn(Formula.Comparison sign) {
    return sign == Formula.Comparison.AT_MOST || sign == Formula.Comparison.AT_LEAST;
  }
}
