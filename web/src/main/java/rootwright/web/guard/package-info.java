/** Who may speak to the desk: the person at this machine, from the desk's own page. */
@NullMarked
package rootwright.web.guard;

import org.jspecify.annotations.NullMarked;
