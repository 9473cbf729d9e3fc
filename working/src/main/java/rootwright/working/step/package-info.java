/** Lines of a working: what is shown, why, and the claim that is checked. */
@NullMarked
package rootwright.working.step;

import org.jspecify.annotations.NullMarked;
