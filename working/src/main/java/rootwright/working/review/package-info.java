/**
 * Somebody's lines of working, looked at one by one: which follow, which is the first wrong one.
 */
@NullMarked
package rootwright.working.review;

import org.jspecify.annotations.NullMarked;
