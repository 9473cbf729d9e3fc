package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;

/**
 * Counts the renamings of n names that leave an expression unchanged: the product, over the names
 * in turn, of how many names it can be sent to while the earlier ones stay. Each question is a
 * search that gives up a partial renaming as soon as the terms cannot match, and that trusts a
 * complete one only when the expressions are equal.
 */
final class Stabilizer {

  private final RationalFunction function;
  private final int names;

  Stabilizer(RationalFunction reduced, int names) {
    function = reduced;
    this.names = names;
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
    int[] begin = Arrays.copyOf(placed, length);
    int[] same = new int[length];
    Arrays.setAll(same, k -> k);
    if (!view(function.numerator(), same).equals(view(function.numerator(), begin))
        || !view(function.denominator(), same).equals(view(function.denominator(), begin))) {
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
        if (canBeCompleted(longer, length + 1)) {
          return true;
        }
      }
    }
    return false;
  }

  /** What is seen of a term when only some names can be told apart and signs are forgotten. */
  private record Sight(Rational size, Monomial placed, Monomial others) {}

  private Map<Sight, Integer> view(MultivariatePolynomial polynomial, int[] order) {
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
              counts.merge(new Sight(value.absolute(), Monomial.of(seen), rest), 1, Integer::sum);
            });
    return counts;
  }
}
