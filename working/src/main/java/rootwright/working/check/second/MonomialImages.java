package rootwright.working.check.second;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.working.step.Setting;

/**
 * The sum over the images of a single term c·r^a·s^b·…, without going through them: one root after
 * another takes one of the exponents that are left, or none, and the sums for all that may be left
 * are carried along.
 */
final class MonomialImages {

  private final Rational factor;
  private final List<BigInteger> exponents = new ArrayList<>();
  private final List<Integer> times = new ArrayList<>();

  private MonomialImages(Rational factor, Map<String, BigInteger> byName) {
    this.factor = factor;
    Map<BigInteger, Integer> counts = new TreeMap<>();
    for (BigInteger exponent : byName.values()) {
      if (exponent.signum() != 0) {
        counts.merge(exponent, 1, Integer::sum);
      }
    }
    counts.forEach(
        (exponent, count) -> {
          exponents.add(exponent);
          times.add(count);
        });
  }

  /** The images of a formula that is a single term in the names of roots; else nothing. */
  static Optional<MonomialImages> of(Formula body, Setting setting) {
    Map<String, BigInteger> byName = new TreeMap<>();
    return factor(body, BigInteger.ONE, byName, setting)
        .map(factor -> new MonomialImages(factor, byName));
  }

  /** Collects the exponents and returns the number in front. */
  private static Optional<Rational> factor(
      Formula formula, BigInteger power, Map<String, BigInteger> byName, Setting setting) {
    if (formula instanceof Formula.Name name && setting.roots().contains(name.spelling())) {
      byName.merge(name.spelling(), power, BigInteger::add);
      return Optional.of(Rational.ONE);
    } else if (formula instanceof Formula.Numeral numeral && power.equals(BigInteger.ONE)) {
      return Optional.of(numeral.value());
    } else if (formula instanceof Formula.Negative negative && power.equals(BigInteger.ONE)) {
      return factor(negative.of(), power, byName, setting).map(Rational::negate);
    } else if (formula instanceof Formula.Power raised
        && raised.base() instanceof Formula.Name
        && raised.exponent() instanceof Formula.Numeral numeral
        && numeral.value().isInteger()) {
      return factor(raised.base(), power.multiply(numeral.value().numerator()), byName, setting);
    } else if (formula instanceof Formula.Product product) {
      Optional<Rational> all = Optional.of(Rational.ONE);
      for (Formula part : product.factors()) {
        Optional<Rational> own = factor(part, power, byName, setting);
        all = all.flatMap(known -> own.map(known::times));
      }
      return all;
    }
    return Optional.empty();
  }

  /** The sum over all images, with these roots; powers are taken by the function given. */
  ComplexBall sum(
      List<ComplexBall> roots, int bits, BiFunction<ComplexBall, BigInteger, ComplexBall> power) {
    int states = 1;
    for (int count : times) {
      states *= count + 1;
    }
    ComplexBall[] sums = new ComplexBall[states];
    Arrays.fill(sums, ComplexBall.ZERO);
    sums[0] = ComplexBall.ONE;
    for (ComplexBall root : roots) {
      takeIn(root, sums, power);
    }
    return sums[states - 1].times(ComplexBall.of(factor, bits));
  }

  /**
   * The root takes one exponent: states are gone through from the fullest, each from emptier ones.
   */
  private void takeIn(
      ComplexBall root,
      ComplexBall[] sums,
      BiFunction<ComplexBall, BigInteger, ComplexBall> power) {
    List<ComplexBall> powers = new ArrayList<>();
    for (BigInteger exponent : exponents) {
      powers.add(power.apply(root, exponent));
    }
    for (int state = sums.length - 1; state > 0; state--) {
      int stride = 1;
      for (int k = 0; k < times.size(); k++) {
        if (state / stride % (times.get(k) + 1) > 0) {
          sums[state] = sums[state].plus(sums[state - stride].times(powers.get(k)));
        }
        stride *= times.get(k) + 1;
      }
    }
  }
}
