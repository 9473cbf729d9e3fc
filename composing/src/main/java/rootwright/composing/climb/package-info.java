/** From one problem to the next harder one: climbs of five, and harder neighbours. */
@NullMarked
package rootwright.composing.climb;

import org.jspecify.annotations.NullMarked;
