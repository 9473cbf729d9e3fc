/** What an ask may come out as. */
@NullMarked
package rootwright.working.answer;

import org.jspecify.annotations.NullMarked;
