/** Long work: it has a budget, tells how far it is, and stops when nobody waits for it any more. */
@NullMarked
package rootwright.web.job;

import org.jspecify.annotations.NullMarked;
