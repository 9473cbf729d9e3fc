/** Roots that are described instead of given by a polynomial: values at angles, roots of unity. */
@NullMarked
package rootwright.working.described;

import org.jspecify.annotations.NullMarked;
