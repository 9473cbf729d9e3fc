package rootwright.algebra.factor;

import rootwright.algebra.polynomial.Polynomial;

/**
 * A quick proof that a polynomial does not split over the rational numbers: modulo a prime that
 * keeps degree and distinct roots, the degree of every factor is a sum of degrees of the factors
 * there. If only 0 and n are such sums for several primes at once, there is no factor (Musser
 * 1975).
 */
final class IrreducibleByPrimes {

  private static final long[] PRIMES = {5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43};

  /** Sums of degrees are kept as the bits of a word. */
  private static final int HIGHEST_DEGREE = 62;

  private IrreducibleByPrimes() {}

  /**
   * Whether a few small primes prove it; false leaves it open.
   *
   * @param polynomial primitive, of degree at least 1
   */
  static boolean proves(Polynomial polynomial) {
    int n = polynomial.degree();
    if (n > HIGHEST_DEGREE) {
      return false;
    }
    long whole = 1 | 1L << n;
    long degrees = -1;
    for (long prime : PRIMES) {
      ResiduePolynomial residues = ResiduePolynomial.of(polynomial, prime);
      if (residues.degree() == n && residues.isSquarefree()) {
        degrees &= sumsOfDegrees(residues);
        if (degrees == whole) {
          return true;
        }
      }
    }
    return false;
  }

  /** Bit k is set if some factors have degrees that add up to k; by distinct degrees. */
  private static long sumsOfDegrees(ResiduePolynomial squarefree) {
    long sums = 1;
    ResiduePolynomial rest = squarefree;
    ResiduePolynomial unknown = ResiduePolynomial.unknown(squarefree.prime());
    ResiduePolynomial power = unknown;
    for (int d = 1; rest.degree() >= 2 * d; d++) {
      power = power.frobenius(rest);
      ResiduePolynomial common = rest.gcd(power.minus(unknown));
      for (int k = 0; k < common.degree() / d; k++) {
        sums |= sums << d;
      }
      if (common.degree() > 0) {
        rest = rest.over(common);
        power = rest.degree() > 0 ? power.remainder(rest) : power;
      }
    }
    return rest.degree() > 0 ? sums | sums << rest.degree() : sums;
  }
}
