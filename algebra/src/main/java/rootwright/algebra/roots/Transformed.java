package rootwright.algebra.roots;

import rootwright.algebra.polynomial.Polynomial;

/** The polynomial whose roots are the images of the roots, if every image exists. */
public sealed interface Transformed {

  /**
   * All images exist.
   *
   * @param polynomial primitive with positive lead; images that agree are repeated roots
   */
  record Exact(Polynomial polynomial) implements Transformed {}

  /**
   * A root makes the denominator zero.
   *
   * @param common the monic polynomial whose roots are those culprits
   */
  record ZeroDenominator(Polynomial common) implements Transformed {}
}
