package rootwright.algebra.symmetric;

import java.math.BigInteger;
import java.util.NavigableMap;
import java.util.TreeMap;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.symmetric.internal.PackedPowerSum;
import rootwright.algebra.symmetric.internal.Packing;

/**
 * Closed forms between power sums and elementary symmetric polynomials (Girard 1629, Waring 1762;
 * Macdonald, Symmetric Functions and Hall Polynomials, I.2).
 */
public final class GirardWaring {

  private GirardWaring() {}

  /**
   * The power sum p_k of n variables in e_1, …, e_n: Σ (−1)^(k+a) k·(a−1)!/(a_1!⋯a_n!)·∏ e_i^a_i
   * over all a_1 + 2a_2 + … + n·a_n = k, with a = Σ a_i; p_0 = n. One step for each term: as many
   * as k has partitions into parts not above n.
   *
   * @throws IllegalArgumentException if k is negative or there is no variable
   */
  public static ElementaryForm powerSum(int k, int variables) {
    if (k < 0 || variables < 1) {
      throw new IllegalArgumentException("p_%d of %d variables".formatted(k, variables));
    }
    if (k == 0) {
      return ElementaryForm.of(variables, MultivariatePolynomial.constant(Rational.of(variables)));
    }
    int slots = Math.min(k, variables);
    if (Packing.fits(slots, k)) {
      try {
        return ElementaryForm.packed(
            variables, PackedPowerSum.of(Packing.of(slots), k, 1), Rational.ONE);
      } catch (ArithmeticException tooWide) {
        return inBigNumbers(k, variables);
      }
    }
    return inBigNumbers(k, variables);
  }

  private static ElementaryForm inBigNumbers(int k, int variables) {
    NavigableMap<Monomial, Rational> terms = new TreeMap<>();
    choose(terms, new int[variables], Math.min(k, variables), k, 0, BigInteger.ONE, k);
    return ElementaryForm.of(variables, MultivariatePolynomial.of(terms));
  }

  /** Chooses a_i for this i and all below; {@code orders} is the multinomial of those chosen. */
  private static void choose(
      NavigableMap<Monomial, Rational> terms,
      int[] exponents,
      int i,
      int left,
      int chosen,
      BigInteger orders,
      int k) {
    BigInteger counted = orders;
    int most = left / i;
    for (int count = 0; count <= most; count++) {
      if (count > 0) {
        counted =
            counted
                .multiply(BigInteger.valueOf((long) chosen + count))
                .divide(BigInteger.valueOf(count));
      }
      if (i > 1) {
        exponents[i - 1] = count;
        choose(terms, exponents, i - 1, left - count * i, chosen + count, counted, k);
        exponents[i - 1] = 0;
      }
    }
    if (i == 1) {
      exponents[0] = left;
      int total = chosen + left;
      Rational size =
          new Rational(counted.multiply(BigInteger.valueOf(k)), BigInteger.valueOf(total));
      terms.put(Monomial.of(exponents), (k + total) % 2 == 0 ? size : size.negate());
    }
  }

  /**
   * The elementary polynomial e_k in power sums p_1, …, p_k: Σ (−1)^(k−l(λ))/z_λ·p_λ over the
   * partitions λ of k, where z_λ is the product of i^(m_i)·m_i! for m_i parts equal to i; e_0 = 1.
   * Unknown k − 1 stands for p_k. True for every number of variables.
   *
   * @throws IllegalArgumentException if k is negative
   */
  public static MultivariatePolynomial elementary(int k) {
    NavigableMap<Monomial, Rational> terms = new TreeMap<>();
    for (Partition partition : Partition.all(k, k)) {
      BigInteger z = BigInteger.ONE;
      int[] exponents = new int[k];
      for (int part : partition.parts()) {
        exponents[part - 1]++;
        z = z.multiply(BigInteger.valueOf((long) part * exponents[part - 1]));
      }
      boolean positive = (k - partition.length()) % 2 == 0;
      terms.put(
          Monomial.of(exponents),
          new Rational(positive ? BigInteger.ONE : BigInteger.ONE.negate(), z));
    }
    return MultivariatePolynomial.of(terms);
  }
}
