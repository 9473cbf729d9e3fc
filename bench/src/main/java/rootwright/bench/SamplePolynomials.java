package rootwright.bench;

import cc.redberry.rings.Rings;
import cc.redberry.rings.bigint.BigInteger;
import cc.redberry.rings.poly.univar.UnivariatePolynomial;
import java.util.SplittableRandom;
import rootwright.algebra.polynomial.Polynomial;

/** Monic squarefree polynomials with coefficients from −9 to 9, the same ones in every run. */
final class SamplePolynomials {

  private SamplePolynomials() {}

  static Polynomial monic(int degree) {
    SplittableRandom random = new SplittableRandom(degree);
    while (true) {
      long[] descending = new long[degree + 1];
      descending[0] = 1;
      for (int k = 1; k <= degree; k++) {
        descending[k] = random.nextInt(-9, 10);
      }
      Polynomial candidate = Polynomial.ofDescending(descending);
      if (descending[degree] != 0 && candidate.isSquarefree()) {
        return candidate;
      }
    }
  }

  static Polynomial dense(int degree, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    long[] descending = new long[degree + 1];
    for (int k = 0; k <= degree; k++) {
      descending[k] = 1 + random.nextInt(9);
    }
    return Polynomial.ofDescending(descending);
  }

  static UnivariatePolynomial<BigInteger> toRings(Polynomial polynomial) {
    BigInteger[] ascending = new BigInteger[polynomial.degree() + 1];
    for (int k = 0; k < ascending.length; k++) {
      ascending[k] = new BigInteger(polynomial.numerator(k));
    }
    return UnivariatePolynomial.create(Rings.Z, ascending);
  }

  /** A benchmark of two different answers would say nothing. */
  static void requireEqual(Object ours, Object theirs) {
    if (!ours.toString().equals(theirs.toString())) {
      throw new IllegalStateException("ours " + ours + ", the library's " + theirs);
    }
  }
}
