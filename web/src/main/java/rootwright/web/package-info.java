/**
 * The desk as a page in the browser: one server for one person, on this machine only.
 *
 * <p>Entry point: {@link rootwright.web.DeskServer}.
 */
@NullMarked
package rootwright.web;

import org.jspecify.annotations.NullMarked;
