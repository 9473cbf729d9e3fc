package rootwright.composing.scan.filter;

import rootwright.algebra.polynomial.Polynomial;

/** The exact answers that the shortcuts of the filters fall back on. */
public interface ExactTests {

  /** Whether no root is repeated. */
  boolean isSquarefree(Polynomial polynomial);

  /** Whether some root is a rational number. */
  boolean hasRationalRoot(Polynomial polynomial);

  /** Whether the polynomial, of degree 1 at least, is no product of two of lower degree over Q. */
  boolean isIrreducible(Polynomial polynomial);

  /** How many roots are real, each taken as often as it occurs. */
  int realRoots(Polynomial polynomial);
}
