/** Partial fractions over the roots of a polynomial, and expressions in their numerators. */
@NullMarked
package rootwright.working.fraction;

import org.jspecify.annotations.NullMarked;
