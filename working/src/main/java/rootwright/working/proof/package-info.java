/**
 * Facts about the roots of any polynomial: statements with their conditions, proofs at three
 * lengths, and the checks that confirm the computational lines for a chosen number of letters.
 */
@NullMarked
package rootwright.working.proof;

import org.jspecify.annotations.NullMarked;
