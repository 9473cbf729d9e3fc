/** Whether an ask is well posed, and what to say if not. */
@NullMarked
package rootwright.working.gate;

import org.jspecify.annotations.NullMarked;
