/**
 * Packages for programs that deliver and score papers: Question and Test Interoperability 3.0
 * (1EdTech 2022).
 *
 * <p>Written by the rules of the specification; no schema has validated it.
 */
@NullMarked
package rootwright.press.qti;

import org.jspecify.annotations.NullMarked;
