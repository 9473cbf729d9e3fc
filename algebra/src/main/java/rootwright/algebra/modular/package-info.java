/** Arithmetic modulo one machine word, and the integers put together again from residues. */
@NullMarked
package rootwright.algebra.modular;

import org.jspecify.annotations.NullMarked;
