/** Words with formulas in them, as they are typed, shown and said. */
@NullMarked
package rootwright.lesson.text;

import org.jspecify.annotations.NullMarked;
