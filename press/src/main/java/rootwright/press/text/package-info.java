/** Plain text with the signs of mathematics, wrapped to the width of a letter. */
@NullMarked
package rootwright.press.text;

import org.jspecify.annotations.NullMarked;
