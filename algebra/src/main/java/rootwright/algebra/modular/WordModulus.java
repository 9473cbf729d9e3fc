package rootwright.algebra.modular;

import java.math.BigInteger;

/**
 * Arithmetic modulo a number that fits in a machine word. Residues are handled as representatives,
 * whose meaning is the modulus' own affair: {@link #represent} and {@link #residue} translate.
 */
public sealed interface WordModulus permits OddModulus, SmallModulus {

  /** The number m. */
  long modulus();

  /** The representative of any whole number. */
  long represent(BigInteger value);

  /** The number from 0 to m − 1 that is represented. */
  long residue(long representative);

  /** The product. */
  long times(long left, long right);

  /** The negative. */
  long negate(long value);

  /**
   * Σ a[from + i]·b[to − i] over i under the length: one coefficient of a product of polynomials,
   * with one reduction for the whole sum.
   */
  long convolution(long[] a, int from, long[] b, int to, int length);
}
