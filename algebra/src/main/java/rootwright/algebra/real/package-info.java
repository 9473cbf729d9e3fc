/** Counting and isolating the real roots of a polynomial, exactly. */
@NullMarked
package rootwright.algebra.real;

import org.jspecify.annotations.NullMarked;
