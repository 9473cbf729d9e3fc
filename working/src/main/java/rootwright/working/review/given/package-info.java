/**
 * Somebody's working of a problem in which letters are open or something is given besides a
 * polynomial: every line is judged as a consequence of equations.
 */
@NullMarked
package rootwright.working.review.given;

import org.jspecify.annotations.NullMarked;
