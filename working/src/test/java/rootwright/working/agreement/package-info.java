/** What is worked, against general-purpose libraries that know nothing of it. */
@NullMarked
package rootwright.working.agreement;

import org.jspecify.annotations.NullMarked;
