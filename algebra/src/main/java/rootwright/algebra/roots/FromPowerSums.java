package rootwright.algebra.roots;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * The monic polynomial whose roots have given power sums, by Newton's identities: k·e_k = Σ
 * (−1)^(i−1) e_(k−i) p_i over i = 1 … k.
 */
final class FromPowerSums {

  private FromPowerSums() {}

  /**
   * The monic polynomial of degree n with these power sums.
   *
   * @param sums p_1, …, p_n in this order; the degree is their number. O(n²) products.
   */
  static Polynomial polynomial(List<Rational> sums) {
    int degree = sums.size();
    // c_k is the coefficient of x^(n−k): k·c_k = −Σ c_(k−i) p_i.
    List<Rational> descending = new ArrayList<>(degree + 1);
    descending.add(Rational.ONE);
    for (int k = 1; k <= degree; k++) {
      Rational sum = Rational.ZERO;
      for (int i = 1; i <= k; i++) {
        sum = sum.plus(descending.get(k - i).times(sums.get(i - 1)));
      }
      descending.add(sum.over(Rational.of(-k)));
    }
    Collections.reverse(descending);
    return Polynomial.ofAscending(descending);
  }
}
