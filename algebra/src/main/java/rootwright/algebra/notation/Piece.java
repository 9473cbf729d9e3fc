package rootwright.algebra.notation;

/**
 * A formula together with where it was read.
 *
 * @param formula in normal form
 * @param height how deep the tree is, a leaf being 1
 * @param from the code point at which it begins
 * @param to the code point after it
 * @param shape how it was held together
 */
record Piece(Formula formula, int height, int from, int to, Shape shape) {

  /** What holds a piece together. */
  enum Shape {
    /** One thing, or a bracket. */
    ATOM,
    /** Two or more factors written side by side. */
    JUXTAPOSED,
    /** Factors with signs between them. */
    PRODUCT,
    /** A fraction written with a stroke. */
    QUOTIENT,
    /** Commas. */
    LISTING,
    /** A chain of comparisons. */
    RELATION,
    /** A fraction of two whole numbers that counts as one number. */
    NUMBER_FRACTION,
    /** Anything else without brackets. */
    OPEN
  }
}
