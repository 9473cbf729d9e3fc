/**
 * Ideals of polynomials in several unknowns: what follows from equations, and with which factors.
 */
@NullMarked
package rootwright.algebra.ideal;

import org.jspecify.annotations.NullMarked;
