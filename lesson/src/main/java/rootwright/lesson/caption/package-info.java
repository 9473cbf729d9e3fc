/** Captions and chapters from the narration. */
@NullMarked
package rootwright.lesson.caption;

import org.jspecify.annotations.NullMarked;
