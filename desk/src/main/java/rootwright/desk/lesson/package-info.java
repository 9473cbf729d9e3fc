/** What a coach does to prepare a lesson. */
@NullMarked
package rootwright.desk.lesson;

import org.jspecify.annotations.NullMarked;
