/** Lists of problems as a coach keeps them: one a line. */
@NullMarked
package rootwright.desk.list;

import org.jspecify.annotations.NullMarked;
