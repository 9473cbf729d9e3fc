/** Inequalities between expressions in real numbers, proved by squares or refuted by an example. */
@NullMarked
package rootwright.working.inequality;

import org.jspecify.annotations.NullMarked;
