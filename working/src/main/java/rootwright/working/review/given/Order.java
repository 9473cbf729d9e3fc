package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.ideal.CommonZeros;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.RationalFunction;

/** Judges inequalities: at all solutions where these are finitely many, else at samples. */
final class Order {

  private static final int DIGITS = 40;
  private static final int BITS = 165;
  private static final int SAMPLES = 12;

  /** What can be said of an inequality. */
  enum Holds {
    /** At every solution. */
    ALWAYS,
    /** At every sample that was looked at, which proves nothing. */
    AT_SAMPLES,
    /** Not at some solution. */
    NOT,
    /** The sides have no value that could be enclosed. */
    UNKNOWN
  }

  private final Ground ground;
  private final Truths truths;

  Order(Ground ground, Truths truths) {
    this.ground = ground;
    this.truths = truths;
  }

  Holds holds(Formula left, Formula.Comparison sign, Formula right) {
    Optional<RationalFunction> difference =
        ground.writing().of(left).flatMap(l -> ground.writing().of(right).map(l::minus));
    if (difference.isEmpty()) {
      return Holds.UNKNOWN;
    }
    boolean narrowed = truths.isPossible(truths.equations(true));
    boolean complete = false;
    int looked = 0;
    for (int sample = 1; sample <= SAMPLES && !complete; sample++) {
      Optional<CommonZeros> zeros =
          CommonZeros.of(truths.equations(narrowed), ground.names().size(), DIGITS, sample);
      if (zeros.isEmpty()) {
        continue;
      }
      complete = zeros.get().complete();
      for (List<ComplexBall> point : zeros.get().points()) {
        Optional<Integer> signum = signum(difference.get(), point);
        if (isAllowed(point) && signum.isPresent()) {
          looked++;
          if (!Signs.allows(sign, signum.get())) {
            return Holds.NOT;
          }
        }
      }
    }
    return looked == 0 ? Holds.UNKNOWN : complete ? Holds.ALWAYS : Holds.AT_SAMPLES;
  }

  /** The sign of a real value; a disc that cannot be told from zero counts as zero. */
  private static Optional<Integer> signum(RationalFunction function, List<ComplexBall> point) {
    ComplexBall under = CommonZeros.value(function.denominator(), point, BITS);
    if (under.containsZero()) {
      return Optional.empty();
    }
    ComplexBall value = CommonZeros.value(function.numerator(), point, BITS).over(under, BITS);
    RealBall imaginary = value.imaginary();
    if (!imaginary.containsZero()) {
      return Optional.empty();
    }
    return Optional.of(value.real().isPositive() ? 1 : value.real().isNegative() ? -1 : 0);
  }

  /** Whether the statement allows this solution: real where it says real, positive where so. */
  private boolean isAllowed(List<ComplexBall> point) {
    boolean real =
        ground.says("real")
            || ground.says("positive")
            || ground.says("integer")
            || ground.solution().kind().equals("bound");
    List<Integer> numbers = new ArrayList<>();
    for (int k = 0; k < ground.names().size(); k++) {
      if (!ground.names().spelling(k).startsWith("root 2")
          && !ground.names().spelling(k).equals(ground.unknown())) {
        numbers.add(k);
      }
    }
    return !real
        || numbers.stream()
            .map(point::get)
            .allMatch(
                disc ->
                    disc.imaginaryCentre().isZero()
                        && (!ground.says("positive") || disc.real().isPositive()));
  }
}
