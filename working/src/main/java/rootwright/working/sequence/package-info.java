/** The power sums of a polynomial as a sequence: recurrence, period, generating function, facts. */
@NullMarked
package rootwright.working.sequence;

import org.jspecify.annotations.NullMarked;
