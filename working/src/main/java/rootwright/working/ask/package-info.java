/** The ask of a problem seen from every side that a route or a slip may start from. */
@NullMarked
package rootwright.working.ask;

import org.jspecify.annotations.NullMarked;
