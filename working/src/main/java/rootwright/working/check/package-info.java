/** What a check may say of a claim. */
@NullMarked
package rootwright.working.check;

import org.jspecify.annotations.NullMarked;
