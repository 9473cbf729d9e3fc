/** The pages of the desk: what they have in common, and what stands on each. */
@NullMarked
package rootwright.web.frame;

import org.jspecify.annotations.NullMarked;
