/** Absolute values of roots, of their differences and of other expressions in them. */
@NullMarked
package rootwright.working.moduli;

import org.jspecify.annotations.NullMarked;
