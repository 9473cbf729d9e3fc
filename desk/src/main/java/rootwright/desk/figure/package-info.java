/**
 * The numbers from which figures are drawn: decimals of certified values, rounded only at the end.
 * A figure decides nothing.
 */
@NullMarked
package rootwright.desk.figure;

import org.jspecify.annotations.NullMarked;
