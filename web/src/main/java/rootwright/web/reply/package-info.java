/** What goes back to the page when something could not be done. */
@NullMarked
package rootwright.web.reply;

import org.jspecify.annotations.NullMarked;
