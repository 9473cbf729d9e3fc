/** The lesson as a silent film. */
@NullMarked
package rootwright.lesson.film;

import org.jspecify.annotations.NullMarked;
