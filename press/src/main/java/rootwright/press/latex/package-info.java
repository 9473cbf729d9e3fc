/** LaTeX source for the class {@code article} as every TeX distribution has it. */
@NullMarked
package rootwright.press.latex;

import org.jspecify.annotations.NullMarked;
