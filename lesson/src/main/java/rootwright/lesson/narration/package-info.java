/** What is said at each step, and how long it takes. */
@NullMarked
package rootwright.lesson.narration;

import org.jspecify.annotations.NullMarked;
