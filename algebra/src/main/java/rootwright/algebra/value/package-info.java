/**
 * The exact values an answer may have: rational numbers, numbers a + b√d, and roots of irreducible
 * polynomials named by their place.
 */
@NullMarked
package rootwright.algebra.value;

import org.jspecify.annotations.NullMarked;
