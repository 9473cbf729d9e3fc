/** One page for a browser: MathML, the style inside, nothing fetched from anywhere. */
@NullMarked
package rootwright.press.html;

import org.jspecify.annotations.NullMarked;
