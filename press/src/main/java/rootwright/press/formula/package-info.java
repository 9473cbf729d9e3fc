/**
 * How a formula gets onto a page: written in a script, drawn as an outline, broken into pieces
 * where it may end a line.
 */
@NullMarked
package rootwright.press.formula;

import org.jspecify.annotations.NullMarked;
