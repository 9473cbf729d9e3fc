/**
 * Numbers known only to lie in a ball, and the roots of a polynomial enclosed in such balls.
 *
 * <p>A ball is a promise: the exact result of an operation on any points of the operands lies in
 * the ball returned. It need not be the smallest ball that does.
 */
@NullMarked
package rootwright.algebra.enclosure;

import org.jspecify.annotations.NullMarked;
