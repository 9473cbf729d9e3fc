/** Papers made of problems. */
@NullMarked
package rootwright.desk.paper;

import org.jspecify.annotations.NullMarked;
