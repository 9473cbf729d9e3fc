/** Ending long computations that nobody wants any more. */
@NullMarked
package rootwright.algebra.stop;

import org.jspecify.annotations.NullMarked;
