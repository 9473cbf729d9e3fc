/** Ways to solve that a student can follow. */
@NullMarked
package rootwright.working.route;

import org.jspecify.annotations.NullMarked;
