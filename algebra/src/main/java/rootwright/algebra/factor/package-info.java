/** Splitting a polynomial with rational coefficients into factors. */
@NullMarked
package rootwright.algebra.factor;

import org.jspecify.annotations.NullMarked;
