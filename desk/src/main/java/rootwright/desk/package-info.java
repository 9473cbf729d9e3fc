/**
 * Floor 5: one method for each thing the coach does. No algebra, no HTML, no terminal; the page and
 * the command line above say and show what happens here.
 */
@NullMarked
package rootwright.desk;

import org.jspecify.annotations.NullMarked;
