/** Numbers of which only symmetric values are given. */
@NullMarked
package rootwright.working.values;

import org.jspecify.annotations.NullMarked;
