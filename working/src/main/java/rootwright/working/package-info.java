/**
 * Floor 2: one problem and everything that can be said of it.
 *
 * <p>What is given and wanted, whether that is well posed, the exact answer, the routes a student
 * can follow as checked steps, the wrong turnings, and the two checks that must agree before
 * anything is shown.
 */
@NullMarked
package rootwright.working;

import org.jspecify.annotations.NullMarked;
