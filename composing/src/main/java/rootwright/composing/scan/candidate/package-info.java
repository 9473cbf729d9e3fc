/**
 * The candidates of a scan: a box of integer coefficients, its rows, and integer forms evaluated
 * along a row in 64-bit arithmetic.
 */
@NullMarked
package rootwright.composing.scan.candidate;

import org.jspecify.annotations.NullMarked;
