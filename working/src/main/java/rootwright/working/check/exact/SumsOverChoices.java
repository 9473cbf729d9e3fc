package rootwright.working.check.exact;

import java.util.Arrays;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;
import rootwright.algebra.symmetric.Partition;
import rootwright.algebra.symmetric.SymmetricPolynomial;

/**
 * Sums over all ordered choices of distinct roots, from power sums alone; nothing is expanded, so
 * exponents may be large.
 */
final class SumsOverChoices {

  private final PowerSums powerSums;

  SumsOverChoices(Polynomial polynomial) {
    this.powerSums = PowerSums.of(polynomial);
  }

  /**
   * Σ ∏ x_i^{a_i}: choosing without repetition is choosing the last root freely, less the choices
   * where it repeats an earlier one. Takes as many power sums as there are set partitions.
   */
  Rational of(int... exponents) {
    if (exponents.length == 0) {
      return Rational.ONE;
    }
    int last = exponents[exponents.length - 1];
    int[] others = Arrays.copyOf(exponents, exponents.length - 1);
    Rational sum = powerSums.value(last).times(of(others));
    for (int k = 0; k < others.length; k++) {
      int[] merged = others.clone();
      merged[k] = Math.addExact(merged[k], last);
      sum = sum.minus(of(merged));
    }
    return sum;
  }

  /** The value of a symmetric polynomial of the roots. */
  Rational of(SymmetricPolynomial polynomial) {
    Rational[] sum = {Rational.ZERO};
    polynomial
        .terms()
        .forEach(
            (partition, coefficient) ->
                sum[0] = sum[0].plus(coefficient.times(monomial(partition))));
    return sum[0];
  }

  /** m_λ: every monomial is met once for each way to order its equal parts. */
  private Rational monomial(Partition partition) {
    int[] parts = partition.parts().stream().mapToInt(Integer::intValue).toArray();
    long orders = 1;
    int run = 0;
    for (int k = 0; k < parts.length; k++) {
      run = k > 0 && parts[k] == parts[k - 1] ? run + 1 : 1;
      orders *= run;
    }
    return of(parts).times(Rational.of(1, orders));
  }
}
