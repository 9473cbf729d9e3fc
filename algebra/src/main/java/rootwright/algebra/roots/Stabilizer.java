package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.stop.Stop;

/**
 * Counts the renamings of the names in an expression that leave it unchanged: the product, over the
 * names in turn, of how many names it can be sent to while the earlier ones stay. Each question is
 * a search that gives up a partial renaming as soon as the terms cannot match, and that trusts a
 * complete one only when the expressions are equal.
 */
final class Stabilizer {

  private final RationalFunction function;
  private final int names;

  /**
   * @param reduced the expression in lowest terms, in which every name up to its last occurs
   */
  Stabilizer(RationalFunction reduced) {
    function = reduced;
    names = reduced.unknowns();
  }

  BigInteger order() {
    BigInteger order = BigInteger.ONE;
    int[] placed = new int[names];
    for (int name = 0; name < names; name++) {
      int images = 0;
      for (int image = name; image < names; image++) {
        placed[name] = image;
        if (canBeCompleted(placed, name + 1)) {
          images++;
        }
      }
      placed[name] = name;
      order = order.multiply(BigInteger.valueOf(images));
    }
    return order;
  }

  /** Whether some renaming that begins like this changes nothing. */
  private boolean canBeCompleted(int[] placed, int length) {
    return canBeCompleted(placed, length, Rational.ONE)
        || (!function.isPolynomial() && canBeCompleted(placed, length, Rational.MINUS_ONE));
  }

  /** The same, above and below the stroke up to this sign. */
  private boolean canBeCompleted(int[] placed, int length, Rational sign) {
    Stop.ifUnwanted();
    int[] begin = Arrays.copyOf(placed, length);
    int[] same = new int[length];
    Arrays.setAll(same, k -> k);
    if (!view(function.numerator(), same, sign)
            .equals(view(function.numerator(), begin, Rational.ONE))
        || !view(function.denominator(), same, sign)
            .equals(view(function.denominator(), begin, Rational.ONE))) {
      return false;
    }
    if (length == names) {
      return Orbit.image(function, begin).equals(function);
    }
    int[] longer = Arrays.copyOf(placed, names);
    for (int image = 0; image < names; image++) {
      int candidate = image;
      if (Arrays.stream(begin).noneMatch(taken -> taken == candidate)) {
        longer[length] = image;
        if (canBeCompleted(longer, length + 1, sign)) {
          return true;
        }
      }
    }
    return false;
  }

  /** What is seen of a term when only some names can be told apart. */
  private record Sight(Rational factor, Monomial placed, Monomial others) {}

  private Map<Sight, Integer> view(MultivariatePolynomial polynomial, int[] order, Rational sign) {
    Map<Sight, Integer> counts = new HashMap<>();
    polynomial
        .terms()
        .forEach(
            (monomial, value) -> {
              int[] seen = new int[order.length];
              int[] others = new int[names];
              for (int k = 0; k < names; k++) {
                others[k] = -monomial.exponent(k);
              }
              for (int k = 0; k < order.length; k++) {
                seen[k] = monomial.exponent(order[k]);
                others[order[k]] = 0;
              }
              Arrays.sort(others);
              Monomial rest = Monomial.of(Arrays.stream(others).map(e -> -e).toArray());
              counts.merge(new Sight(value.times(sign), Monomial.of(seen), rest), 1, Integer::sum);
            });
    return counts;
  }
}
