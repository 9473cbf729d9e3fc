/** Typical wrong turnings, run as computations. */
@NullMarked
package rootwright.working.slip;

import org.jspecify.annotations.NullMarked;
