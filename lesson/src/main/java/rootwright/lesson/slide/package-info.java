/** What stands on each slide, and in which order it appears. */
@NullMarked
package rootwright.lesson.slide;

import org.jspecify.annotations.NullMarked;
