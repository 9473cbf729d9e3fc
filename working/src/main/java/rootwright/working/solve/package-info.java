/** One problem put through everything. */
@NullMarked
package rootwright.working.solve;

import org.jspecify.annotations.NullMarked;
