package rootwright.algebra.roots;

import rootwright.algebra.polynomial.Polynomial;

/** One over an expression in a root: it exists exactly when no root makes the expression zero. */
public sealed interface Inverse {

  /**
   * The expression can be inverted.
   *
   * @param value the inverse, of lower degree than the modulus
   */
  record Inverted(Polynomial value) implements Inverse {}

  /**
   * A root makes the expression zero.
   *
   * @param common the monic greatest common divisor with the modulus; its roots are the culprits
   */
  record SharedFactor(Polynomial common) implements Inverse {}
}
