/** Writing XML with the elements balanced and the text escaped. */
@NullMarked
package rootwright.press.markup;

import org.jspecify.annotations.NullMarked;
