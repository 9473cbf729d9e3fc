/** The sentences with blanks in which a coach states a problem. */
@NullMarked
package rootwright.web.sentence;

import org.jspecify.annotations.NullMarked;
