/** Whole problem sentences, as they stand on a sheet, cut into a polynomial and an ask. */
@NullMarked
package rootwright.working.pasted;

import org.jspecify.annotations.NullMarked;
