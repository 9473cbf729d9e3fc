package rootwright.working.inequality;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.stop.Stop;

/** Small numbers for which a claim fails: all small ones are tried, so none is missed. */
final class SmallCounterexample {

  private static final int EXAMPLES = 5;

  private SmallCounterexample() {}

  /**
   * The example with the least sum of absolute values, if there is one below {@value #EXAMPLES};
   * {@code function} is the difference of the sides.
   */
  static Optional<List<Rational>> of(Inequality inequality, RationalFunction function) {
    int n = inequality.letters().size();
    int low = inequality.positive() ? 1 : -EXAMPLES + 1;
    int width = EXAMPLES - low;
    long all = 1;
    for (int k = 0; k < n; k++) {
      all *= width;
    }
    Optional<List<Rational>> best = Optional.empty();
    Rational bestSize = Rational.ZERO;
    for (long number = 0; number < all; number++) {
      Stop.ifUnwanted();
      List<Rational> point = new ArrayList<>();
      long rest = number;
      Rational size = Rational.ZERO;
      for (int k = 0; k < n; k++) {
        Rational one = Rational.of(low + rest % width);
        point.add(one);
        size = size.plus(one.absolute());
        rest /= width;
      }
      List<Rational> full = withCondition(inequality, point);
      boolean allowed = !inequality.positive() || full.stream().allMatch(one -> one.signum() > 0);
      if (allowed
          && (best.isEmpty() || size.compareTo(bestSize) < 0)
          && fails(inequality, function, full)) {
        best = Optional.of(full);
        bestSize = size;
      }
    }
    return best;
  }

  private static boolean fails(
      Inequality inequality, RationalFunction function, List<Rational> point) {
    Rational under = function.denominator().at(point);
    if (under.isZero()) {
      return false;
    }
    int sign = function.numerator().at(point).over(under).signum();
    return inequality.strict() ? sign <= 0 : sign < 0;
  }

  private static List<Rational> withCondition(Inequality inequality, List<Rational> point) {
    if (inequality.condition().isEmpty()) {
      return point;
    }
    int at = inequality.letters().indexOf(inequality.condition().get().getKey());
    RationalFunction value = inequality.condition().get().getValue();
    List<Rational> full = new ArrayList<>(point);
    full.set(at, Rational.ZERO);
    full.set(at, value.numerator().at(full).over(value.denominator().at(full)));
    return full;
  }
}
