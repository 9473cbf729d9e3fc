/**
 * Machine-word arithmetic under the symmetric polynomials: partitions and exponent vectors packed
 * into one {@code long}, coefficients in {@code long} with exact overflow detection. Whoever calls
 * it falls back to big numbers when an {@link ArithmeticException} says that a word is too small.
 */
@NullMarked
package rootwright.algebra.symmetric.internal;

import org.jspecify.annotations.NullMarked;
