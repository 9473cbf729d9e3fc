package rootwright.algebra.roots;

import java.math.BigInteger;

/** A power sum of the roots modulo m, or why there is none. */
public sealed interface PowerSumResidue {

  /**
   * The power sum modulo m.
   *
   * @param value from 0 to m − 1
   */
  record Residue(BigInteger value) implements PowerSumResidue {}

  /**
   * The coefficient that has to be divided by is not invertible modulo m, so the power sum is not
   * known to be a fraction that can be read modulo m.
   *
   * @param coefficient the lead of the primitive polynomial, or for a negative exponent its
   *     constant term
   * @param common its greatest common divisor with m, not one
   */
  record NoResidue(BigInteger coefficient, BigInteger common) implements PowerSumResidue {}

  /**
   * A root is zero and the exponent negative.
   *
   * @param exponent the exponent asked for
   */
  record ZeroRoot(BigInteger exponent) implements PowerSumResidue {}
}
