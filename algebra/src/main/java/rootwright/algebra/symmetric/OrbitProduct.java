package rootwright.algebra.symmetric;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.symmetric.internal.Rearrangements;

/**
 * The product of two monomial symmetric polynomials.
 *
 * <p>The coefficient of m_ν in m_λ·m_μ counts the pairs (α, β) of rearrangements of λ and μ with α
 * + β = ν. Counted over the whole orbit of ν: |orbit ν|·c_ν = |orbit λ|·N_ν, where N_ν counts the
 * rearrangements β of μ for which λ + β is a rearrangement of ν. So λ can stand still.
 */
final class OrbitProduct {

  private OrbitProduct() {}

  /** Adds {@code factor}·m_λ·m_μ to a sum. */
  static void add(
      NavigableMap<Partition, Rational> sum,
      int variables,
      Partition left,
      Partition right,
      Rational factor) {
    // The one with the larger orbit tells more places apart: let the other one move.
    boolean swap = left.orbitSize(variables).compareTo(right.orbitSize(variables)) < 0;
    Partition moving = swap ? left : right;
    Partition fixed = swap ? right : left;
    NavigableMap<Partition, BigInteger> counts = new TreeMap<>();
    Rearrangements.forEachSum(
        fixed.padded(variables),
        moving.padded(variables),
        (vector, ways) -> counts.merge(Partition.of(vector), ways, BigInteger::add));
    BigInteger orbit = fixed.orbitSize(variables);
    counts.forEach(
        (partition, count) ->
            sum.merge(
                partition,
                factor.times(
                    Rational.of(orbit.multiply(count).divide(partition.orbitSize(variables)))),
                Rational::plus));
  }

  /** All monomials of the orbit of a partition in n variables. */
  static List<Monomial> monomials(Partition partition, int variables) {
    List<Monomial> monomials = new ArrayList<>();
    int[] places = new int[variables];
    for (int k = 0; k < variables; k++) {
      places[k] = variables - k;
    }
    // With n different fixed numbers every rearrangement is reported by itself.
    Rearrangements.forEachSum(
        places,
        partition.padded(variables),
        (vector, ways) -> {
          int[] exponents = new int[variables];
          for (int k = 0; k < variables; k++) {
            exponents[k] = vector[k] - places[k];
          }
          monomials.add(Monomial.of(exponents));
        });
    return monomials;
  }
}
