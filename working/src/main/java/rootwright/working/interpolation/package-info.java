/** A polynomial of known degree given by its values, and another value of it. */
@NullMarked
package rootwright.working.interpolation;

import org.jspecify.annotations.NullMarked;
