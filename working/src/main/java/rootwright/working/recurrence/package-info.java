/** Sequences given by a linear recurrence and their first members. */
@NullMarked
package rootwright.working.recurrence;

import org.jspecify.annotations.NullMarked;
