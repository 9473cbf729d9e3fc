/** The plan of a lesson: made, written to a text file, read back and checked line by line. */
@NullMarked
package rootwright.lesson.plan;

import org.jspecify.annotations.NullMarked;
