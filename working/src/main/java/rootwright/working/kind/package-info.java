/** The kinds of ask, one file each. */
@NullMarked
package rootwright.working.kind;

import org.jspecify.annotations.NullMarked;
