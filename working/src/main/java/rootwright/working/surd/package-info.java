/**
 * Numbers with square roots: whole parts of their powers, and the polynomials they are roots of.
 */
@NullMarked
package rootwright.working.surd;

import org.jspecify.annotations.NullMarked;
