/**
 * What leaves the desk of one paper: the sheet, the key, the solutions and whatever goes with it.
 */
@NullMarked
package rootwright.press.deliverable;

import org.jspecify.annotations.NullMarked;
