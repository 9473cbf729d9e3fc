/**
 * A paper as a coach makes it: problems with their keys, in versions, going from draft to checked,
 * frozen and printed.
 *
 * <p>A frozen paper never changes. A key that was not read from the statement that stands on the
 * paper is stale, and nothing is printed with a stale key.
 */
@NullMarked
package rootwright.press.paper;

import org.jspecify.annotations.NullMarked;
