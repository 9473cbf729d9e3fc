/** Slides as drawings: one model, drawn as SVG, as pixels or on a page. */
@NullMarked
package rootwright.lesson.picture;

import org.jspecify.annotations.NullMarked;
