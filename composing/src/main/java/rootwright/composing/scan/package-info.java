/**
 * The scan: screens every polynomial of a coefficient box against a list of filters, in order or in
 * an order drawn from a seed, on any number of threads with the same result, and says which wish
 * left nothing.
 */
@NullMarked
package rootwright.composing.scan;

import org.jspecify.annotations.NullMarked;
