/** Equations that are polynomials in other clothes: powers, square roots, fractions, triangles. */
@NullMarked
package rootwright.working.clothing;

import org.jspecify.annotations.NullMarked;
