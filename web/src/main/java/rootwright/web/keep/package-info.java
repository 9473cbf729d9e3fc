/** What the desk remembers between two visits, as small files in the coach's folder. */
@NullMarked
package rootwright.web.keep;

import org.jspecify.annotations.NullMarked;
