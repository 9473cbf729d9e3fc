/**
 * Formulas as trees, and how they are read and written.
 *
 * <p>{@link rootwright.algebra.notation.Formula} is what every floor above speaks: what a coach
 * typed, what a line of a working claims, what an answer looks like.
 */
@NullMarked
package rootwright.algebra.notation;

import org.jspecify.annotations.NullMarked;
