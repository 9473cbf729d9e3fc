/** What the outputs with HTML inside have in common. */
@NullMarked
package rootwright.press.hypertext;

import org.jspecify.annotations.NullMarked;
