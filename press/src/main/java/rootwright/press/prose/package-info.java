/** Lines of plain text, and the formulas that stand in them unmarked. */
@NullMarked
package rootwright.press.prose;

import org.jspecify.annotations.NullMarked;
