/**
 * The roots of a polynomial in a place where all of them can be written down exactly: an unramified
 * extension of the p-adic integers, cut off at a power of p that is known to be high enough.
 *
 * <p>A whole number that is known to be smaller than half that power is read off its residue, so
 * values of symmetric expressions come out exactly, without complex numbers and without expansion.
 */
@NullMarked
package rootwright.algebra.local;

import org.jspecify.annotations.NullMarked;
