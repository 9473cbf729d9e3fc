package rootwright.algebra.roots;

import java.math.BigInteger;
import rootwright.algebra.number.Rational;

/** The sum of the k-th powers of the roots, or why it is not given. */
public sealed interface PowerSum {

  /**
   * The sum.
   *
   * @param value exact
   */
  record Exact(Rational value) implements PowerSum {}

  /**
   * A root is zero and the exponent negative, so that one of the powers does not exist.
   *
   * @param exponent the exponent asked for
   */
  record ZeroRoot(BigInteger exponent) implements PowerSum {}

  /**
   * The exact number, or one on the way to it, is longer than the stated limit; a residue of it may
   * still be had.
   *
   * @param exponent the exponent asked for
   * @param limit the greatest number of bits that is worked out
   */
  record TooLong(BigInteger exponent, long limit) implements PowerSum {}
}
