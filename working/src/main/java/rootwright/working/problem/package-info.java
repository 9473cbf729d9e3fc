/** What is given and what is wanted. */
@NullMarked
package rootwright.working.problem;

import org.jspecify.annotations.NullMarked;
