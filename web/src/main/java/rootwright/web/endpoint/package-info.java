/** The addresses behind the page: what comes in, what goes out. */
@NullMarked
package rootwright.web.endpoint;

import org.jspecify.annotations.NullMarked;
