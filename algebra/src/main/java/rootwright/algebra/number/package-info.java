/** Exact numbers. */
@NullMarked
package rootwright.algebra.number;

import org.jspecify.annotations.NullMarked;
