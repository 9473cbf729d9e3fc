/**
 * Problems in which coefficients of the polynomial are letters: values as functions of the letters,
 * and letters found from conditions on the roots.
 */
@NullMarked
package rootwright.working.letters;

import org.jspecify.annotations.NullMarked;
