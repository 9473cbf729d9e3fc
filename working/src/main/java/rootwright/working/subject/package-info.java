/**
 * What a problem may be about: the roots of one polynomial, or something else that roots come from.
 */
@NullMarked
package rootwright.working.subject;

import org.jspecify.annotations.NullMarked;
