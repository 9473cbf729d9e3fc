package rootwright.bench;

import cc.redberry.rings.Rings;
import cc.redberry.rings.bigint.BigInteger;
import cc.redberry.rings.poly.PolynomialMethods;
import cc.redberry.rings.poly.multivar.Monomial;
import cc.redberry.rings.poly.multivar.MonomialOrder;
import cc.redberry.rings.poly.multivar.MultivariatePolynomial;
import cc.redberry.rings.poly.multivar.MultivariateResultants;
import java.util.ArrayList;
import java.util.List;

/** What a user of the library Rings would write to bring a symmetric polynomial into Z[e]. */
final class RingsReduction {

  private RingsReduction() {}

  static MultivariatePolynomial<BigInteger> zero(int variables) {
    return MultivariatePolynomial.zero(variables, Rings.Z, MonomialOrder.LEX);
  }

  /** p_0, …, p_last in e_1, …, e_n by Newton's recurrence. */
  static List<MultivariatePolynomial<BigInteger>> powerSums(int variables, int last) {
    MultivariatePolynomial<BigInteger> zero = zero(variables);
    List<MultivariatePolynomial<BigInteger>> sums = new ArrayList<>();
    sums.add(zero.createConstant(variables));
    for (int k = 1; k <= last; k++) {
      MultivariatePolynomial<BigInteger> sum = zero.clone();
      for (int i = 1; i <= Math.min(k, variables); i++) {
        MultivariatePolynomial<BigInteger> term =
            i == k
                ? zero.createMonomial(i - 1, 1).multiply(k)
                : sums.get(k - i).clone().multiplyByMonomial(i - 1, 1);
        sum = i % 2 == 1 ? sum.add(term) : sum.subtract(term);
      }
      sums.add(sum);
    }
    return sums;
  }

  /** m_λ for different parts λ_1 > λ_2 > …, from power sums over all partitions of the parts. */
  static MultivariatePolynomial<BigInteger> monomialByPowerSums(int variables, int[] parts) {
    int weight = 0;
    for (int part : parts) {
      weight += part;
    }
    List<MultivariatePolynomial<BigInteger>> sums = powerSums(variables, weight);
    return join(parts, 0, new ArrayList<>(), sums, zero(variables));
  }

  /** Möbius function of the partition lattice: (−1)^(b−1)·(b−1)! for a block of b parts. */
  private static MultivariatePolynomial<BigInteger> join(
      int[] parts,
      int next,
      List<int[]> blocks,
      List<MultivariatePolynomial<BigInteger>> sums,
      MultivariatePolynomial<BigInteger> total) {
    if (next == parts.length) {
      MultivariatePolynomial<BigInteger> product = total.createOne();
      long factor = 1;
      for (int[] block : blocks) {
        for (int size = 1; size < block[1]; size++) {
          factor *= -size;
        }
        product = product.multiply(sums.get(block[0]));
      }
      return total.add(product.multiply(factor));
    }
    for (int place = 0; place < blocks.size(); place++) {
      int[] block = blocks.get(place);
      block[0] += parts[next];
      block[1]++;
      total = join(parts, next + 1, blocks, sums, total);
      block[0] -= parts[next];
      block[1]--;
    }
    blocks.add(new int[] {parts[next], 1});
    total = join(parts, next + 1, blocks, sums, total);
    blocks.remove(blocks.size() - 1);
    return total;
  }

  /** e_1, …, e_n written out. */
  static List<MultivariatePolynomial<BigInteger>> elementaries(int variables) {
    List<MultivariatePolynomial<BigInteger>> elementaries = new ArrayList<>();
    for (int k = 1; k <= variables; k++) {
      MultivariatePolynomial<BigInteger> sum = zero(variables);
      for (int chosen = 0; chosen < 1 << variables; chosen++) {
        if (Integer.bitCount(chosen) == k) {
          int[] exponents = new int[variables];
          for (int place = 0; place < variables; place++) {
            exponents[place] = chosen >> place & 1;
          }
          sum = sum.add(new Monomial<>(exponents, BigInteger.ONE));
        }
      }
      elementaries.add(sum);
    }
    return elementaries;
  }

  /** The classical loop on the polynomial written out: match the leading term, subtract, repeat. */
  static MultivariatePolynomial<BigInteger> byLeadingTerm(
      MultivariatePolynomial<BigInteger> expanded,
      List<MultivariatePolynomial<BigInteger>> elementaries) {
    int variables = elementaries.size();
    MultivariatePolynomial<BigInteger> rest = expanded.clone();
    MultivariatePolynomial<BigInteger> result = expanded.createZero();
    while (!rest.isZero()) {
      Monomial<BigInteger> leading = rest.lt();
      int[] exponents = new int[variables];
      MultivariatePolynomial<BigInteger> product = expanded.createOne();
      for (int k = 0; k < variables; k++) {
        exponents[k] = leading.exponents[k] - (k + 1 < variables ? leading.exponents[k + 1] : 0);
        if (exponents[k] > 0) {
          product =
              product.multiply(PolynomialMethods.polyPow(elementaries.get(k), exponents[k], true));
        }
      }
      result = result.add(new Monomial<>(exponents, leading.coefficient));
      rest = rest.subtract(product.multiply(leading.coefficient));
    }
    return result;
  }

  /** The general monic polynomial of degree n in e_1, …, e_n and, last, x. */
  static MultivariatePolynomial<BigInteger> general(int degree) {
    MultivariatePolynomial<BigInteger> general = zero(degree + 1).createMonomial(degree, degree);
    for (int k = 1; k <= degree; k++) {
      int[] exponents = new int[degree + 1];
      exponents[k - 1] = 1;
      exponents[degree] = degree - k;
      general =
          general.add(
              new Monomial<>(exponents, k % 2 == 0 ? BigInteger.ONE : BigInteger.ONE.negate()));
    }
    return general;
  }

  static MultivariatePolynomial<BigInteger> genericDiscriminant(
      MultivariatePolynomial<BigInteger> general) {
    return MultivariateResultants.Discriminant(general, general.nVariables - 1);
  }

  /** A polynomial of ours, read by the library. */
  static MultivariatePolynomial<BigInteger> read(
      rootwright.algebra.polynomial.MultivariatePolynomial polynomial, int variables) {
    MultivariatePolynomial<BigInteger> sum = zero(variables);
    for (var term : polynomial.terms().entrySet()) {
      int[] exponents = new int[variables];
      for (int k = 0; k < term.getKey().length(); k++) {
        exponents[k] = term.getKey().exponent(k);
      }
      sum =
          sum.add(
              new Monomial<>(exponents, new BigInteger(term.getValue().numerator().toString())));
    }
    return sum;
  }
}
