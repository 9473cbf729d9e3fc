package rootwright.working.check.exact;

import java.math.BigInteger;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSum;
import rootwright.algebra.roots.PowerSums;

/** The values of S_k, e_k and h_k at the roots of one polynomial. */
final class FamilyValues {

  /** h_k is worked out one after another, so k is at most 4095. */
  private static final int LARGEST_INDEX_BITS = 12;

  private final Polynomial polynomial;

  FamilyValues(Polynomial polynomial) {
    this.polynomial = polynomial;
  }

  /**
   * S_k, k of either sign.
   *
   * @throws Unevaluable if 0 is a root and k negative, or if it has too many digits
   */
  Rational powerSum(BigInteger k) {
    PowerSum sum = PowerSums.of(polynomial).exact(k);
    if (sum instanceof PowerSum.Exact known) {
      return known.value();
    } else if (sum instanceof PowerSum.ZeroRoot) {
      throw Unevaluable.zeroDenominator("0 is a root, so a sum of negative powers is undefined");
    }
    throw Unevaluable.tooLarge("the power sum has too many digits to write out");
  }

  /** e_k; 0 for k outside 0 … n. */
  Rational elementary(BigInteger k) {
    int n = polynomial.degree();
    if (k.signum() < 0 || k.compareTo(BigInteger.valueOf(n)) > 0) {
      return Rational.ZERO;
    }
    Rational size = polynomial.coefficient(n - k.intValue()).over(polynomial.lead());
    return k.testBit(0) ? size.negate() : size;
  }

  /**
   * h_k = e_1·h_{k−1} − e_2·h_{k−2} + …, with h_0 = 1; 0 for negative k.
   *
   * @throws Unevaluable if k is above 4095
   */
  Rational complete(BigInteger k) {
    if (k.signum() < 0) {
      return Rational.ZERO;
    }
    if (k.bitLength() > LARGEST_INDEX_BITS) {
      throw Unevaluable.tooLarge("h_k is worked out up to k = 4095");
    }
    Rational[] h = new Rational[k.intValue() + 1];
    h[0] = Rational.ONE;
    for (int m = 1; m < h.length; m++) {
      Rational sum = Rational.ZERO;
      for (int j = 1; j <= Math.min(m, polynomial.degree()); j++) {
        Rational term = elementary(BigInteger.valueOf(j)).times(h[m - j]);
        sum = j % 2 == 1 ? sum.plus(term) : sum.minus(term);
      }
      h[m] = sum;
    }
    return h[k.intValue()];
  }
}
