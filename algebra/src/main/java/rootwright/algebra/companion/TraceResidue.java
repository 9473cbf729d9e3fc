package rootwright.algebra.companion;

import java.math.BigInteger;

/** The trace of a power of a companion matrix modulo m, or why there is none. */
public sealed interface TraceResidue {

  /**
   * The trace modulo m.
   *
   * @param value from 0 to m − 1
   */
  record Known(BigInteger value) implements TraceResidue {}

  /**
   * The matrix, or for a negative exponent its inverse, cannot be written modulo m.
   *
   * @param coefficient the coefficient of the polynomial that is not invertible modulo m; zero if
   *     the exponent is negative and a root is zero
   */
  record NotInvertible(BigInteger coefficient) implements TraceResidue {}
}
