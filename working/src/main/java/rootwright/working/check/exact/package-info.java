/** The first check: exact normal forms in the algebra of the roots. */
@NullMarked
package rootwright.working.check.exact;

import org.jspecify.annotations.NullMarked;
