/**
 * The wishes a candidate of a scan may have to meet: the shape of the answer, a normal form, and
 * properties of its roots, each with a test for a whole row.
 */
@NullMarked
package rootwright.composing.scan.filter;

import org.jspecify.annotations.NullMarked;
