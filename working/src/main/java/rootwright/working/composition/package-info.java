/** A polynomial put into itself: the roots of P(P(x)) = c, level by level. */
@NullMarked
package rootwright.working.composition;

import org.jspecify.annotations.NullMarked;
