/**
 * Pages: the document becomes formatting objects (XSL 1.1, W3C 2006), which a formatter sets into
 * tagged pages; formulas are outlines with invisible linear text beneath.
 */
@NullMarked
package rootwright.press.pdf;

import org.jspecify.annotations.NullMarked;
