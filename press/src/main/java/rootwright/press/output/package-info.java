/** What every output has in common. */
@NullMarked
package rootwright.press.output;

import org.jspecify.annotations.NullMarked;
