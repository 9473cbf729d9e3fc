/** Remainders of one polynomial on division by another. */
@NullMarked
package rootwright.working.division;

import org.jspecify.annotations.NullMarked;
