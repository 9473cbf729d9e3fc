/** What a coach keeps between two sittings, as small plain files in a folder. */
@NullMarked
package rootwright.desk.keep;

import org.jspecify.annotations.NullMarked;
