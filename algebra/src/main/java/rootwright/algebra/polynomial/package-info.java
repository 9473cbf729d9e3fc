/** Polynomials in one and in several unknowns over the rational numbers. */
@NullMarked
package rootwright.algebra.polynomial;

import org.jspecify.annotations.NullMarked;
