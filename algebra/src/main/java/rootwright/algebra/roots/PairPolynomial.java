package rootwright.algebra.roots;

import java.math.BigInteger;
import rootwright.algebra.modular.Lifting;
import rootwright.algebra.modular.OddModulus;
import rootwright.algebra.modular.WordPrimes;
import rootwright.algebra.polynomial.Polynomial;

/**
 * Polynomials whose roots are made from pairs of different places in the list of roots of P: r + s,
 * r·s and (r − s)² over the n(n − 1)/2 unordered pairs, r/s over the n(n − 1) ordered ones. Roots
 * that agree stay repeated roots. Primitive form with positive lead.
 *
 * <p>The power sums of the pairs follow from those of P, and Newton's identities give the
 * polynomial (Bostan, Flajolet, Salvy and Schost, Fast computation of special resultants, J.
 * Symbolic Computation 41 (2006) 1–29), modulo primes of 61 bits. How many primes is proven
 * beforehand: a polynomial of degree N has coefficients of size at most 2^N·M, M its Mahler
 * measure, and the Mahler measure of P is at most the root of the sum of the squares of its
 * coefficients (Landau 1905). O(N²) word operations a prime.
 */
public final class PairPolynomial {

  private PairPolynomial() {}

  /** The roots r + s; 1 if there is only one root. */
  public static Polynomial sums(Polynomial polynomial) {
    return of(polynomial, PairPowerSums.SUMS);
  }

  /** The roots r·s; 1 if there is only one root. */
  public static Polynomial products(Polynomial polynomial) {
    return of(polynomial, PairPowerSums.PRODUCTS);
  }

  /** The roots (r − s)², Lagrange's equation of squared differences; 1 if there is one root. */
  public static Polynomial squaredDifferences(Polynomial polynomial) {
    return of(polynomial, PairPowerSums.SQUARED_DIFFERENCES);
  }

  /** The roots r/s over ordered pairs, unless a root is zero. */
  public static Transformed ratios(Polynomial polynomial) {
    return polynomial.degree() > 1 && polynomial.coefficient(0).isZero()
        ? new Transformed.ZeroDenominator(Polynomial.X)
        : new Transformed.Exact(of(polynomial, PairPowerSums.RATIOS));
  }

  private static Polynomial of(Polynomial polynomial, PairPowerSums pairs) {
    if (polynomial.degree() < 1) {
      throw new IllegalArgumentException("a constant has no roots: " + polynomial);
    }
    Polynomial primitive = polynomial.primitive();
    int size = pairs.size(primitive.degree());
    if (size == 0) {
      return Polynomial.ONE;
    }
    BigInteger range = pairs.bound(primitive).shiftLeft(1);
    Lifting lifting = new Lifting(size + 1);
    for (int number = 0; lifting.range().compareTo(range) <= 0; number++) {
      OddModulus prime = WordPrimes.get(number);
      if (pairs.isGood(primitive, prime)) {
        lifting.add(prime, pairs.coefficients(primitive, size, prime));
      }
    }
    return Polynomial.ofAscending(lifting.values(), BigInteger.ONE).primitive();
  }
}
