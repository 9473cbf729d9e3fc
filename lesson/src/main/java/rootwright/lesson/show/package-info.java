/** The lesson as files to show. */
@NullMarked
package rootwright.lesson.show;

import org.jspecify.annotations.NullMarked;
