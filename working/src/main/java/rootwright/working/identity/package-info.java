/** Identities that hold under a condition: proved by reduction, or refuted by an example. */
@NullMarked
package rootwright.working.identity;

import org.jspecify.annotations.NullMarked;
