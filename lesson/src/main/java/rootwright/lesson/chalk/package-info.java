/** The board plan for chalk. */
@NullMarked
package rootwright.lesson.chalk;

import org.jspecify.annotations.NullMarked;
