package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;
import rootwright.working.step.Claim;
import rootwright.working.step.LetterInterval;

/**
 * The least or greatest value of a function of the letter on a region.
 *
 * @param asked the region
 * @param ask what is wanted
 * @param over the numerator of the function of the letter
 * @param under its denominator
 * @param stationary the real zeros of its derivative
 * @param best the value and where it is attained; empty if there is none
 * @param why why there is none
 */
record ExtremeAsked(
    RegionAsked asked,
    LetterAsk.Extreme ask,
    Polynomial over,
    Polynomial under,
    List<ExactValue> stationary,
    Optional<Attained> best,
    String why) {

  /** A value of the function and where it is taken. */
  record Attained(ExactValue letter, ExactValue value) {}

  ExtremeAsked {
    stationary = List.copyOf(stationary);
  }

  static ExtremeAsked of(RegionAsked asked, LetterAsk.Extreme ask, RationalFunction function) {
    Polynomial over = InLetters.inOne(function.numerator(), 1);
    Polynomial under = InLetters.inOne(function.denominator(), 1);
    Polynomial slope = over.derivative().times(under).minus(over.times(under.derivative()));
    List<ExactValue> stationary =
        slope.degree() < 1
            ? List.of()
            : ExactValues.rootsOf(slope).stream()
                .map(ExactRoot::value)
                .filter(ExactValue::isReal)
                .toList();
    int sign = ask.side() == LetterAsk.Extreme.Side.LEAST ? 1 : -1;
    Optional<Attained> best = Optional.empty();
    Optional<Attained> bound = Optional.empty();
    for (LetterInterval piece : asked.region().pieces()) {
      requireNoPole(under, piece);
      List<ExactValue> candidates = new ArrayList<>(stationary);
      piece.low().ifPresent(candidates::add);
      piece.high().ifPresent(candidates::add);
      piece
          .low()
          .ifPresent(
              low -> {
                if (piece.high().isEmpty()) {
                  candidates.add(low);
                }
              });
      if (piece.low().isEmpty() && piece.high().isEmpty()) {
        candidates.add(new RationalValue(Rational.ZERO));
      }
      for (ExactValue candidate : candidates) {
        boolean in = piece.contains(candidate);
        boolean end =
            piece.low().filter(candidate::equals).isPresent()
                || piece.high().filter(candidate::equals).isPresent();
        if (in || end) {
          Attained here = new Attained(candidate, ValueAtLetter.of(function, candidate));
          if (in && better(here, best, sign)) {
            best = Optional.of(here);
          }
          if (better(here, bound, sign)) {
            bound = Optional.of(here);
          }
        }
      }
      for (int way : new int[] {-1, 1}) {
        boolean unbounded = way < 0 ? piece.low().isEmpty() : piece.high().isEmpty();
        if (unbounded && over.degree() > under.degree()) {
          int far =
              over.lead().signum()
                  * under.lead().signum()
                  * ((over.degree() - under.degree()) % 2 == 0 || way > 0 ? 1 : -1);
          if (far * sign < 0) {
            return new ExtremeAsked(
                asked,
                ask,
                over,
                under,
                stationary,
                Optional.empty(),
                "it grows beyond all bounds, so there is no %s value".formatted(ask.word()));
          }
        } else if (unbounded) {
          Rational limit =
              over.degree() < under.degree() || over.isZero()
                  ? Rational.ZERO
                  : over.lead().over(under.lead());
          Attained far = new Attained(new RationalValue(Rational.ZERO), new RationalValue(limit));
          if (better(far, bound, sign)) {
            bound = Optional.of(far);
          }
        }
      }
    }
    boolean attained =
        best.isPresent()
            && bound.isPresent()
            && ExactValues.compareReal(best.get().value(), bound.get().value()) == 0;
    return new ExtremeAsked(
        asked,
        ask,
        over,
        under,
        stationary,
        attained ? best : Optional.empty(),
        asked.region().pieces().isEmpty()
            ? "no value of %s satisfies the conditions".formatted(asked.letter())
            : "it comes as near as one likes to a value that it does not take");
  }

  private static boolean better(Attained here, Optional<Attained> best, int sign) {
    return best.isEmpty() || sign * ExactValues.compareReal(here.value(), best.get().value()) < 0;
  }

  private static void requireNoPole(Polynomial under, LetterInterval piece) {
    if (under.degree() < 1) {
      return;
    }
    for (ExactRoot pole : ExactValues.rootsOf(under)) {
      boolean at =
          pole.value().isReal()
              && (piece.contains(pole.value())
                  || piece.low().filter(pole.value()::equals).isPresent()
                  || piece.high().filter(pole.value()::equals).isPresent());
      if (at) {
        throw new BeyondLettersException(
            "its denominator is 0 at a value of the letter that is allowed or at an end");
      }
    }
  }

  /** The claim that this is the extreme value. */
  Optional<Claim> claim() {
    return best.map(
        found ->
            new Claim.Extreme(
                over,
                under,
                asked.region().pieces(),
                found.value(),
                found.letter(),
                ask.side() == LetterAsk.Extreme.Side.LEAST
                    ? Claim.Extreme.Side.LEAST
                    : Claim.Extreme.Side.GREATEST));
  }
}
