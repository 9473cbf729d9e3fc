/** What can be taught: topics with their facts, a warning, a trick and problems to work. */
@NullMarked
package rootwright.working.topic;

import org.jspecify.annotations.NullMarked;
