/**
 * Sums over the roots by powers of the companion matrix: a second way to them that shares no code
 * with the algebra of the roots, so that each can be checked against the other.
 */
@NullMarked
package rootwright.algebra.companion;

import org.jspecify.annotations.NullMarked;
