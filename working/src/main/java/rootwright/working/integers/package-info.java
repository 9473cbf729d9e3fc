/** Integers among roots and coefficients: finite by divisors, by squares, or by descent. */
@NullMarked
package rootwright.working.integers;

import org.jspecify.annotations.NullMarked;
