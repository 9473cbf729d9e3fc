/** Families of asks: shapes of expression from which an order can draw. */
@NullMarked
package rootwright.composing.family;

import org.jspecify.annotations.NullMarked;
