package rootwright.working.route;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.symmetric.Partition;
import rootwright.algebra.symmetric.SymmetricPolynomial;

/**
 * Monomial symmetric polynomials with the root names of a problem: Σ r²s, and e_2 for Σ rs.
 *
 * @param names a name for every root
 */
record OrbitSums(List<String> names) {

  OrbitSums {
    names = List.copyOf(names);
  }

  /** Whether this partition names an elementary polynomial or a constant. */
  static boolean isElementary(Partition partition) {
    return partition.part(0) <= 1;
  }

  /** Whether the polynomial is a sum of multiples of elementary polynomials. */
  static boolean isElementary(SymmetricPolynomial polynomial) {
    return polynomial.terms().keySet().stream().allMatch(OrbitSums::isElementary);
  }

  /** n·(n − 1)·…·(n − k + 1), in how many ways k roots of n can be named in order; it saturates. */
  static long arrangements(int n, int k) {
    long ways = 1;
    for (int j = 0; j < k; j++) {
      ways = ways > Integer.MAX_VALUE ? ways : ways * (n - j);
    }
    return ways;
  }

  /** The sum of the orbit of a partition: e_k for a column, 1 for the empty one. */
  Formula sum(Partition partition) {
    if (partition.length() == 0) {
      return Formula.number(1);
    }
    if (isElementary(partition)) {
      return NamedForm.elementary(partition.length());
    }
    Formula monomial = monomial(partition);
    return partition.orbitSize(names.size()).equals(BigInteger.ONE)
        ? monomial
        : new Formula.Aggregate(Formula.Aggregate.Operation.SUM, monomial);
  }

  /** One monomial of the orbit, in the first names. */
  Formula monomial(Partition partition) {
    List<Formula> factors = new ArrayList<>();
    for (int k = 0; k < partition.length(); k++) {
      factors.add(Combination.power(Formula.name(names.get(k)), partition.part(k)));
    }
    return Combination.product(factors);
  }

  /**
   * A symmetric polynomial, largest partition first; e_1, e_2, … ascending if there are no others.
   */
  Formula written(SymmetricPolynomial polynomial) {
    if (isElementary(polynomial)) {
      return NamedForm.inElementary(polynomial.toElementary().polynomial()).written();
    }
    Combination sum = new Combination();
    for (Map.Entry<Partition, Rational> term : polynomial.terms().descendingMap().entrySet()) {
      sum.plus(term.getValue(), sum(term.getKey()));
    }
    return sum.formula();
  }
}
