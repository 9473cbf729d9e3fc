package rootwright.working.letters;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;
import rootwright.working.step.LetterInterval;

/** The whole numbers in intervals of a letter. */
final class WholeNumbers {

  /** More than these are not listed. */
  private static final int MOST = 2000;

  private static final int DIGITS = 20;

  private WholeNumbers() {}

  /** All of them, ascending; empty if there are infinitely many, or more than are listed. */
  static Optional<List<ExactValue>> in(List<LetterInterval> pieces) {
    List<ExactValue> found = new ArrayList<>();
    for (LetterInterval piece : pieces) {
      if (piece.low().isEmpty() || piece.high().isEmpty()) {
        return Optional.empty();
      }
      BigInteger from = floor(piece.low().get());
      BigInteger to = floor(piece.high().get()).add(BigInteger.TWO);
      if (to.subtract(from).compareTo(BigInteger.valueOf(MOST)) > 0) {
        return Optional.empty();
      }
      for (BigInteger k = from; k.compareTo(to) <= 0; k = k.add(BigInteger.ONE)) {
        ExactValue whole = new RationalValue(Rational.of(k));
        if (piece.contains(whole)) {
          found.add(whole);
        }
      }
    }
    return found.size() > MOST ? Optional.empty() : Optional.of(List.copyOf(found));
  }

  /**
   * The least or greatest of them, pieces being ascending; empty if there is none, or no end to
   * them.
   */
  static Optional<ExactValue> first(List<LetterInterval> pieces, LetterAsk.Extreme.Side side) {
    boolean least = side == LetterAsk.Extreme.Side.LEAST;
    for (int at = 0; at < pieces.size(); at++) {
      LetterInterval piece = pieces.get(least ? at : pieces.size() - 1 - at);
      Optional<ExactValue> end = least ? piece.low() : piece.high();
      if (end.isEmpty()) {
        return Optional.empty();
      }
      BigInteger near = floor(end.get());
      for (int step = 0; step <= 4; step++) {
        ExactValue whole =
            new RationalValue(Rational.of(near.add(BigInteger.valueOf(least ? step : 2 - step))));
        if (piece.contains(whole)) {
          return Optional.of(whole);
        }
      }
    }
    return Optional.empty();
  }

  /** A whole number at most as great, and less than it by at most 2. */
  private static BigInteger floor(ExactValue value) {
    return value.enclosure(DIGITS).real().low().toRational().floor();
  }
}
